import { compareRollers } from '@swardsink/model'
import { html, type TemplateResult } from 'lit'
import { rackAxis, rackRow, rackScale } from '../../../../packages/explorer/src/figures/rackPlot.ts'
import type { Framing } from './gallery.ts'
import { grooved, smooth, units } from './units.ts'

const TOLERANCE = 0.25e-3

export const rackFigures = (framing: Framing): Record<string, TemplateResult> =>
  Object.fromEntries(
    ['usual', 'grooved', 'soft'].map(name => {
      const { unit, turf } = units[name] as (typeof units)[string]
      const diameter = unit.frontRoller.diameter * 1e3
      const rollers = {
        'smooth, fitted': unit.frontRoller,
        'smooth, heavy': smooth(diameter, 9.4),
        'grooved, land 5 of 12': grooved(diameter),
        'smooth, worn': smooth(diameter - 0.8, 5.9),
        'very heavy': smooth(diameter, 5500),
      }
      const rows = compareRollers({ unit, rollers, turf, condition: { kind: 'standing' } })
      const height = (row: (typeof rows)[number]) => (row.outcome === 'settled' ? row.effectiveHeight : null)
      const fitted = rows.find(row => row.fitted)
      const whole = framing({ axis: `effective height, ${framing(null).units === 'US' ? 'in' : 'mm'}` })
      const frame = { ...whole, width: Math.min(300, whole.width * 0.5) }
      const scale = rackScale(
        { heights: rows.map(height), fitted: fitted ? height(fitted) : null, tolerance: TOLERANCE },
        frame,
      )
      return [
        name,
        html`<table><thead><tr><th>roller</th><th>cuts</th><th></th></tr></thead>
          <tbody>${rows.map(row => {
            const value = height(row)
            return html`<tr><td>${row.name}</td><td>${value === null ? row.outcome : frame.format(value, 'height')}</td>
              <td class="drawn">${rackRow({ height: value, isFitted: row.fitted, name: row.name }, scale)}</td></tr>`
          })}</tbody>
          <tfoot><tr><td></td><td></td><td class="drawn">${rackAxis(scale, frame)}</td></tr></tfoot></table>`,
      ]
    }),
  )
