import { displayUnit } from '@swardsink/model'
import type { Shown, Table } from '../view.ts'
import type { UncertaintyResult } from './kind.ts'
import type { UncertaintySettings } from './settings.ts'

const PROBABILITIES = [0.025, 0.25, 0.5, 0.75, 0.975]

/** Everything the figures show, as numbers. */
export function uncertaintyTable({ result, reader }: Shown<UncertaintySettings, UncertaintyResult>): Table {
  const { words, format, units, locale } = reader
  const { table: said, inputs } = words.uncertainty
  const unit = displayUnit('height', units)
  const height = (what: string, value: number) => [what, format(value, 'height', { unit: false }), unit]
  const percents = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 1 })
  const share = (what: string, value: number) => [what, percents.format(value).replace('%', ''), '%']
  const { nominal, quantiles, deviation, wanted, hangsOn, interactions } = result
  const name = (key: string) => inputs[key] ?? key
  return {
    caption: said.caption,
    columns: [
      { head: said.what, unit: '' },
      { head: said.value, unit: '' },
      { head: said.unit, unit: '' },
    ],
    rows: [
      ...(nominal === null ? [] : [height(said.nominal, nominal)]),
      ...quantiles.map((value, i) =>
        height(said.quantile(percents.format(PROBABILITIES[i] ?? 0).replace('%', '\u202f%')), value),
      ),
      ...(deviation === null ? [] : [height(said.deviation, deviation)]),
      ...(wanted && wanted.within !== null
        ? [
            share(said.within, wanted.within),
            share(said.below, wanted.below ?? 0),
            share(said.above, wanted.above ?? 0),
          ]
        : []),
      ...(hangsOn ?? []).map(one => share(said.share(name(one.name)), one.share)),
      ...(interactions === null ? [] : [share(said.together, interactions)]),
      ...(hangsOn ?? []).flatMap(one =>
        one.by === null
          ? []
          : [[said.effect(name(one.name)), format(one.by, 'height', { unit: false, signed: true }), unit]],
      ),
    ],
  }
}
