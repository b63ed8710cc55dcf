import type { Phrase } from '../phrasebook.ts'

/** The paragraph of methods, and why a fit cannot leave as a script. */
export const modelReports: readonly Phrase[] = [
  [
    'Turf was described by the {law} law of pressure against sinkage, {equation}, softness being the sinkage of a wide plate under 10 kPa.',
    'Der Rasen wurde durch ein Gesetz des Drucks über der Einsinktiefe beschrieben ({law}), {equation}; die Weichheit ist die Einsinktiefe einer breiten Platte bei 10 kPa.',
  ],
  ['Sinkage under each load followed from {ways+}.', 'Die Einsinktiefe unter jeder Last folgte aus: {ways}.'],
  ['the pressure under a plate', 'dem Druck unter einer Platte'],
  ['the shear of the mat around it', 'der Scherung des Filzes darum herum'],
  [
    'the pressure integrated over the arc of a standing roller',
    'dem über den Bogen einer stehenden Walze integrierten Druck',
  ],
  ['the balance of the whole unit on both rollers', 'dem Gleichgewicht der ganzen Einheit auf beiden Walzen'],
  [
    'The zero of the gauge was unknown and was estimated for each set.',
    'Der Nullpunkt des Messgeräts war unbekannt und wurde für jede Gruppe geschätzt.',
  ],
  [
    'Parameters were found by damped nonlinear least squares (Swardsink, docs/physics.md §7.1 and §7.2).',
    'Die Parameter wurden mit gedämpften nichtlinearen kleinsten Quadraten gefunden (Swardsink, docs/physics.md §7.1 und §7.2).',
  ],
  [
    'A robust loss ({kind}, from {at} standard deviations) was used.',
    'Verwendet wurde ein robustes Verlustmaß ({kind}, ab {at} Standardabweichungen).',
  ],
  ['A robust loss ({kind}) was used.', 'Verwendet wurde ein robustes Verlustmaß ({kind}).'],
  [
    'Readings were weighted by the inverse of their known variance, that of a mean divided by its number of readings, with the variance of the gauge’s step (step²/12) added.',
    'Die Messwerte wurden mit dem Kehrwert ihrer bekannten Varianz gewichtet, die eines Mittels durch die Zahl seiner Messwerte geteilt; die Varianz der Teilung des Messgeräts (Teilung²/12) ist addiert.',
  ],
  [
    'Readings were weighted by the inverse of their known variance, that of a mean divided by its number of readings.',
    'Die Messwerte wurden mit dem Kehrwert ihrer bekannten Varianz gewichtet, die eines Mittels durch die Zahl seiner Messwerte geteilt.',
  ],
  [
    'The standard deviation of a reading was taken to be {value}, that of a mean divided by the root of its number of readings, with the variance of the gauge’s step (step²/12) added.',
    'Als Standardabweichung eines Messwerts wurde {value} genommen, die eines Mittels durch die Wurzel der Zahl seiner Messwerte geteilt; die Varianz der Teilung des Messgeräts (Teilung²/12) ist addiert.',
  ],
  [
    'The standard deviation of a reading was taken to be {value}, that of a mean divided by the root of its number of readings.',
    'Als Standardabweichung eines Messwerts wurde {value} genommen, die eines Mittels durch die Wurzel der Zahl seiner Messwerte geteilt.',
  ],
  [
    'Readings were weighted in proportion to the inverse of the variance given with them, with the variance of the gauge’s step (step²/12) added, and the scatter was estimated from the residuals.',
    'Die Messwerte wurden im Verhältnis zum Kehrwert der mit ihnen gegebenen Varianz gewichtet, die Varianz der Teilung des Messgeräts (Teilung²/12) addiert, und die Streuung wurde aus den Residuen geschätzt.',
  ],
  [
    'Readings were weighted in proportion to the inverse of the variance given with them, and the scatter was estimated from the residuals.',
    'Die Messwerte wurden im Verhältnis zum Kehrwert der mit ihnen gegebenen Varianz gewichtet, und die Streuung wurde aus den Residuen geschätzt.',
  ],
  [
    'Readings were weighted by the number of readings they are the mean of, and the scatter was estimated from the residuals.',
    'Die Messwerte wurden mit der Zahl der Messwerte gewichtet, deren Mittel sie sind, und die Streuung wurde aus den Residuen geschätzt.',
  ],
  [
    'Positive parameters were solved for in their logarithm; standard errors are from the covariance (JᵀWJ)⁻¹ at the minimum, {level} % intervals from {quantile}, for positive parameters on the logarithm.',
    'Positive Parameter wurden in ihrem Logarithmus bestimmt; die Standardfehler stammen aus der Kovarianz (JᵀWJ)⁻¹ am Minimum, die {level}-%-Intervalle aus {quantile}, für positive Parameter auf dem Logarithmus.',
  ],
  ['the normal distribution', 'der Normalverteilung'],
  ['the t distribution with {n} degree of freedom', 'der t-Verteilung mit {n} Freiheitsgrad'],
  ['the t distribution with {n} degrees of freedom', 'der t-Verteilung mit {n} Freiheitsgraden'],
  // Which numbers were fitted: before the names of numbers, for it holds several of them.
  ...parameters(),
  // Scripts.
  [
    'a roller on turf that spreads load has no sinkage that can be written down',
    'die Einsinktiefe einer Walze auf Rasen, der Last verteilt, lässt sich nicht als Formel schreiben',
  ],
  [
    'a plate on turf that spreads load has no sinkage that can be written down, but with the linear law',
    'die Einsinktiefe einer Platte auf Rasen, der Last verteilt, lässt sich nur beim linearen Gesetz als Formel schreiben',
  ],
  [
    'the {law} law has no sinkage that can be written down',
    'bei diesem Gesetz ({law}) lässt sich die Einsinktiefe nicht als Formel schreiben',
  ],
  ['the scenario with its rollers is not at hand', 'das Szenario mit seinen Walzen ist nicht zur Hand'],
  ['turf reaches the floor of a groove', 'der Rasen erreicht den Grund einer Rille'],
  [
    'its robust loss is weighed by a procedure of its own',
    'ihr robustes Verlustmaß hat ein eigenes Verfahren der Gewichtung',
  ],
  [
    'a drop of the whole unit asks for its balance',
    'eine Absenkung der ganzen Einheit braucht deren Gleichgewicht',
  ],
]

/** "A and b were estimated for all readings together, c was estimated for each set and d was held." */
function parameters(): readonly Phrase[] {
  const parts = [
    ['shared', 'estimated for all readings together', 'für alle Messwerte gemeinsam geschätzt'],
    ['own', 'estimated for each set', 'für jede Gruppe geschätzt'],
    ['held', 'held', 'vorgegeben'],
  ] as const
  const chosen = [[0, 1, 2], [0, 1], [0, 2], [1, 2], [0], [1], [2]] as const
  return chosen.flatMap(some => {
    const forms = some.map(i => {
      const [name, english, other] = parts[i] ?? parts[0]
      return ['was', 'were'].map(is => [`{${name}+} ${is} ${english}`, `${other}: {${name}}`] as const)
    })
    return combined(forms).map((list): Phrase => {
      const english = list.map(([text]) => text)
      const joined =
        english.length < 2 ? english.join('') : `${english.slice(0, -1).join(', ')} and ${english.at(-1)}`
      return [`${joined}.`, `Die Parameter: ${list.map(([, text]) => text).join('; ')}.`]
    })
  })
}

function combined<Item>(forms: readonly (readonly Item[])[]): readonly (readonly Item[])[] {
  const [first, ...rest] = forms
  return first ? first.flatMap(item => combined(rest).map(others => [item, ...others])) : [[]]
}
