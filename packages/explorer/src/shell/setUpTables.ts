import { GRAVITY, type QuantityName, type Roller, type Scenario, softnessOf } from '@swardsink/model'
import { html, nothing, type TemplateResult } from 'lit'
import { fittedName, presentTurf } from '../book/index.ts'
import { formatterFor, type Reader } from '../words/index.ts'
import type { SetUp } from './setUp.ts'

/** The unit in numbers, in both systems of units, and boxes to write in what was then measured. */
export function setUpTables(q: {
  readonly scenario: Scenario
  readonly found: Extract<SetUp, { readonly bench: number }>
  readonly reader: Reader
}): TemplateResult {
  const { scenario, found, reader } = q
  const { setUp: said } = reader.words.sheets
  const other = formatterFor(reader.units === 'metric' ? 'US' : 'metric', reader.locale)
  const both = (value: number, quantity: QuantityName) =>
    html`${reader.format(value, quantity)} <span class="other">${other(value, quantity)}</span>`
  const { unit, settled } = found
  const { frontRoller, rearRoller } = unit
  const turf = presentTurf(scenario)
  const carried = (load: number) =>
    html`${said.onScales({ load: reader.format(load, 'load'), mass: reader.format(load / GRAVITY, 'mass') })}
      <span class="other">${other(load / GRAVITY, 'mass')}</span>`
  const rows: readonly (readonly [string, unknown])[] = [
    [said.frontRoller, rollerWords(frontRoller, { name: fittedName(scenario, 'front'), reader })],
    [said.itsSize, html`${both(frontRoller.diameter, 'diameter')}, ${both(frontRoller.mass, 'mass')}`],
    [said.rearRoller, rollerWords(rearRoller, { name: fittedName(scenario, 'rear'), reader })],
    [said.itsSize, html`${both(rearRoller.diameter, 'diameter')}, ${both(rearRoller.mass, 'mass')}`],
    [said.lengths, html`${both(unit.wheelbase, 'wheelbase')}, ${both(unit.edge, 'wheelbase')}`],
    [said.loadFront, carried(settled.front.load)],
    [said.loadRear, carried(settled.rear.load)],
    [said.turf, html`${both(softnessOf(turf.law), 'softness')}, ${both(turf.spread ?? 0, 'spread')}`],
    [said.sinks, html`${both(settled.front.sinkage, 'sinkage')}, ${both(settled.rear.sinkage, 'sinkage')}`],
  ]
  return html`<div class="tables">
    <section aria-labelledby="unit">
      <h2 id="unit">${said.unit}</h2>
      <table aria-labelledby="unit">
        <tbody>${rows.map(([name, value]) => html`<tr><th scope="row">${name}</th><td>${value}</td></tr>`)}</tbody>
      </table>
    </section>
    <section aria-labelledby="check">
      <h2 id="check">${said.check}</h2>
      <table class="boxes" aria-labelledby="check">
        <thead><tr><td></td>${[said.left, said.middle, said.right].map(end => html`<th scope="col">${end}</th>`)}</tr></thead>
        <tbody>${Object.values(said.write).map(
          ([name, how]) => html`<tr>
            <th scope="row">${name}${how ? html`<br><span class="other">${how}</span>` : nothing}</th>
            <td></td><td></td><td></td>
          </tr>`,
        )}</tbody>
      </table>
    </section>
  </div>`
}

function rollerWords(
  { surface }: Roller,
  { name, reader }: { readonly name: string | null; readonly reader: Reader },
): string {
  const { surfaces } = reader.words
  const face =
    surface.kind === 'smooth'
      ? surfaces.smooth
      : surfaces.grooved({
          land: reader.format(surface.land, 'land', { unit: false }),
          pitch: reader.format(surface.pitch, 'pitch'),
        })
  return name === null ? face : `${name}, ${face}`
}
