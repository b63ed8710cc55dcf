import { displayUnit, softnessOf } from '@swardsink/model'
import { css, html, LitElement, nothing } from 'lit'
import { presentTurf, settable } from '../../book/index.ts'
import { announce, paleStyles, printed, stepped, watchWidth } from '../../controls/index.ts'
import { mapDomain, mapScales, sinkageMapView } from '../../figures/index.ts'
import { figureStyles, sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { type MapResult, type MapSettings, SHOWN_AS, valueHere } from './kind.ts'

/** What each axis sets. */
const AXES = {
  mass: { name: 'frontRoller.mass', quantity: 'mass' },
  softness: { name: 'turf.softness', quantity: 'softness' },
} as const

/** The map, with the case in hand as a mark that is dragged, clicked or stepped with the arrow keys. */
export class MapEntry extends LitElement {
  static override properties = { shown: { attribute: false } }
  static override styles = [
    sharedStyles,
    figureStyles,
    paleStyles,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      .drawn {
        touch-action: pan-y pinch-zoom;
        cursor: crosshair;
      }
    `,
  ]

  declare shown: Shown<MapSettings, MapResult>
  private readonly width = watchWidth(this, '.drawn')
  private dragging = false

  private get frame() {
    const { reader, settings } = this.shown
    const { words, format, units, locale } = reader
    return {
      width: this.width(),
      words: words.figures.map({
        quantity: words.map.quantities[settings.quantity],
        unit: displayUnit(SHOWN_AS[settings.quantity], units),
        massUnit: displayUnit('mass', units),
        softnessUnit: displayUnit('softness', units),
      }),
      format,
      units,
      locale,
      text: reader.figureText,
      ...(reader.tallest === undefined ? {} : { tallest: reader.tallest }),
    }
  }

  override render() {
    const { shown } = this
    const { settings, stale, now, result } = shown
    const width = this.width()
    return html`
      <div
        class="drawn ${stale ? 'pale' : ''}"
        @pointerdown=${this.pressed}
        @pointermove=${this.moved}
        @pointerup=${this.lifted}
        @pointercancel=${this.lifted}
        @keydown=${this.stepped}
        @focusout=${this.lifted}
      >${
        width === 0
          ? nothing
          : sinkageMapView(
              {
                map: result,
                mark: {
                  mass: now.unit.frontRoller.mass,
                  softness: softnessOf(presentTurf(now).law),
                  value: valueHere(now, settings.quantity),
                },
                readings: result.places,
              },
              this.frame,
            )
      }</div>
    `
  }

  private set(which: 'mass' | 'softness', value: number): void {
    const { reader } = this.shown
    const { name, quantity } = AXES[which]
    const round = printed(value, { quantity, units: reader.units })
    announce(this, 'enter', {
      name,
      value: round,
      text: reader.format(round, quantity, { unit: false }),
      gesture: 'map',
    })
  }

  private place(event: PointerEvent): void {
    const figure = this.renderRoot.querySelector('svg.sinkage-map')
    if (!figure) return
    const { left, top } = figure.getBoundingClientRect()
    const scales = mapScales(mapDomain(this.shown.result), this.frame)
    this.set('mass', scales.massAt(event.clientX - left))
    this.set('softness', scales.softnessAt(event.clientY - top))
  }

  private pressed(event: PointerEvent): void {
    if (!event.isPrimary || event.button !== 0) return
    const figure = this.renderRoot.querySelector('svg.sinkage-map')
    if (!figure) return
    const { left, top } = figure.getBoundingClientRect()
    const { box } = mapScales(mapDomain(this.shown.result), this.frame)
    const [x, y] = [event.clientX - left - box.x, event.clientY - top - box.y]
    const reach = 16
    if (x < -reach || y < -reach || x > box.width + reach || y > box.height + reach) return
    this.dragging = true
    if (event.currentTarget instanceof Element) event.currentTarget.setPointerCapture(event.pointerId)
    this.place(event)
    this.renderRoot.querySelector<SVGElement>('[data-handle="mark"]')?.focus({ preventScroll: true })
  }

  private moved(event: PointerEvent): void {
    if (this.dragging) this.place(event)
  }

  private lifted(): void {
    this.dragging = false
    announce(this, 'settled', { name: AXES.mass.name })
  }

  /** Left and right change the mass, up and down the softness, as the axes run. */
  private stepped(event: KeyboardEvent): void {
    const across = event.key === 'ArrowLeft' || event.key === 'ArrowRight'
    const { name } = across ? AXES.mass : AXES.softness
    const of = settable(name)
    const value = of?.kind === 'quantity' ? of.value(this.shown.now) : null
    if (of?.kind !== 'quantity' || value === null) return
    const { units } = this.shown.reader
    const next = stepped(
      { key: event.key, value, quantity: of.quantity, units, line: of.line },
      { ends: across },
    )
    if (next === null || event.altKey || event.ctrlKey || event.metaKey) return
    event.preventDefault()
    this.set(across ? 'mass' : 'softness', Math.min(of.line.high, Math.max(of.line.low, next)))
  }
}

customElements.define('map-entry', MapEntry)
