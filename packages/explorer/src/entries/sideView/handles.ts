import type { Unit } from '@swardsink/model'
import { announce, printed } from '../../controls/index.ts'
import type { SideLayout } from '../../figures/index.ts'
import type { Shown } from '../view.ts'

const MILLIMETRES = 1000
/** A drag of so many px down makes the roller one kilogram heavier. */
const PX_PER_KILOGRAM = 20

type Grip = {
  readonly name: string
  readonly quantity: 'height' | 'mass'
  readonly start: number
  /** SI for a pixel of travel downwards. */
  readonly perPixel: number
}

/** What each handle of the drawing sets; the others only carry their name. */
function gripOf(
  handle: string,
  { unit, layout }: { readonly unit: Unit; readonly layout: SideLayout },
): Grip | null {
  if (handle === 'edge') {
    const perPixel = -1 / (layout.scale * layout.exaggeration * MILLIMETRES)
    return { name: 'unit.benchHeight', quantity: 'height', start: unit.benchHeight, perPixel }
  }
  if (handle === 'front') {
    return {
      name: 'frontRoller.mass',
      quantity: 'mass',
      start: unit.frontRoller.mass,
      perPixel: 1 / PX_PER_KILOGRAM,
    }
  }
  return null
}

/** Lets a drawing's handles be dragged up and down. Every one of them has a field on the page as well. */
export function watchHandles(host: HTMLElement & { readonly shown: Shown }, layout: () => SideLayout): void {
  let held: { readonly grip: Grip; readonly from: number } | null = null
  host.addEventListener('pointerdown', event => {
    const handle = event
      .composedPath()
      .map(target => (target instanceof Element ? target.getAttribute('data-handle') : null))
      .find(name => name !== null)
    if (!handle || event.button !== 0) return
    const grip = gripOf(handle, { unit: host.shown.now.unit, layout: layout() })
    if (!grip) return
    held = { grip, from: event.clientY }
    host.setPointerCapture(event.pointerId)
    event.preventDefault()
  })
  host.addEventListener('pointermove', event => {
    if (!held) return
    const { grip, from } = held
    const { reader } = host.shown
    const value = printed(grip.start + (event.clientY - from) * grip.perPixel, {
      quantity: grip.quantity,
      units: reader.units,
    })
    const text = reader.format(value, grip.quantity, { unit: false })
    announce(host, 'enter', { name: grip.name, value, text, gesture: `drag ${grip.name}` })
  })
  const release = (): void => {
    if (held) announce(host, 'settled', { name: held.grip.name })
    held = null
  }
  host.addEventListener('pointerup', release)
  host.addEventListener('pointercancel', release)
}
