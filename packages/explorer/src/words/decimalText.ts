const formatters = new Map<string, Intl.NumberFormat>()

/** A number that is of no quantity of the catalogue, with so many decimals or so many digits. */
export function decimalText(
  value: number,
  q: { readonly locale: string } & ({ readonly decimals: number } | { readonly digits: number }),
): string {
  const key = JSON.stringify(q)
  const known =
    formatters.get(key) ??
    new Intl.NumberFormat(q.locale, {
      useGrouping: false,
      ...('decimals' in q
        ? { minimumFractionDigits: q.decimals, maximumFractionDigits: q.decimals }
        : { maximumSignificantDigits: q.digits }),
    })
  formatters.set(key, known)
  return known.format(value).replace('-', '\u2212')
}
