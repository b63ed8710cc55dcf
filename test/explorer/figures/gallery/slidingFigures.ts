import { type HeadlandQuestion, headland } from '@swardsink/model'
import type { TemplateResult } from 'lit'
import { type SlidingSpec, slidingProfile } from '../../../../packages/explorer/src/figures/slidingProfile.ts'
import { headlandFigure } from '../../../../packages/explorer/src/words/english/headland.ts'
import type { Framing } from './gallery.ts'

type Case = Omit<HeadlandQuestion, 'roller' | 'load'> & {
  readonly sections?: number
  readonly length?: number
}

const cases: Record<string, Case> = {
  'in one piece': { radius: 3 },
  'three sections': { radius: 3, sections: 3 },
  'two axles': { radius: 3, sections: 3, axleSpacing: 0.19 },
  'with drag': { radius: 3, friction: 0.4, drag: 25 },
  'drag and sections': { radius: 3, sections: 2, friction: 0.4, drag: 48 },
  tight: { radius: 0.2, sections: 8 },
  wide: { radius: 20, length: 1 },
}

/** A profile as the entry would ask for it. */
export function slidingSpec({ sections = 1, length = 0.56, ...asked }: Case): SlidingSpec {
  const roller = { mass: 5, diameter: 0.057, length, surface: { kind: 'smooth' }, sections } as const
  const ask = { ...asked, load: 150 }
  const found = headland({ roller, ...ask })
  const whole =
    sections === 1 ? null : (headland({ roller: { ...roller, sections: 1 }, ...ask }).still[0] ?? null)
  const { still, mean, rootMeanSquare } = found
  const { radius, axleSpacing = 0 } = asked
  return { length, sections, radius, offset: axleSpacing / 2, still, mean, rootMeanSquare, whole }
}

export const slidingSpecs: Record<string, SlidingSpec> = Object.fromEntries(
  Object.entries(cases).map(([name, one]) => [name, slidingSpec(one)]),
)

export const slidingFigures = (framing: Framing): Record<string, TemplateResult> => {
  const isUS = framing(null).units === 'US'
  const words = headlandFigure({ unit: isUS ? 'in/ft' : 'mm/m', placeUnit: isUS ? 'in' : 'mm' })
  return Object.fromEntries(
    Object.entries(slidingSpecs).map(([name, spec]) => [name, slidingProfile(spec, framing(words))]),
  )
}
