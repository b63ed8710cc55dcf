import type { Phrase } from '../phrasebook.ts'

/** What is judged of a fit. Those that are parts of others stand behind them. */
export const modelFits: readonly Phrase[] = [
  // Lack of fit.
  [
    'The repeats speak of no lack of fit along the {word}: the means of repeated readings miss the curve {ratio} times as much, in squares, as repeats differ among themselves; such a ratio comes {chance} when the law is right.',
    'Die Wiederholungen sprechen nicht gegen die Kurve ({word}): Die Mittel wiederholter Messwerte verfehlen sie, in Quadraten, {ratio}-mal so weit, wie sich Wiederholungen unterscheiden; stimmt das Gesetz, kommt das {chance} vor.',
  ],
  [
    'The law does not follow the readings: the means of repeated readings miss the curve {ratio} times as much, in squares, as repeats differ among themselves; such a ratio comes {chance} when the law is right. The law may bend otherwise than the turf, or the sets may differ in what they share.',
    'Das Gesetz folgt den Messwerten nicht: Die Mittel wiederholter Messwerte verfehlen die Kurve, in Quadraten, {ratio}-mal so weit, wie sich Wiederholungen unterscheiden; stimmt das Gesetz, kommt das {chance} vor. Das Gesetz krümmt sich vielleicht anders als der Rasen, oder die Gruppen unterscheiden sich in dem, was sie teilen.',
  ],
  [
    'The law does not follow the readings: the means of repeated readings miss the curve {ratio} times as much, in squares, as repeats differ among themselves; such a ratio comes {chance} when the law is right.',
    'Das Gesetz folgt den Messwerten nicht: Die Mittel wiederholter Messwerte verfehlen die Kurve, in Quadraten, {ratio}-mal so weit, wie sich Wiederholungen unterscheiden; stimmt das Gesetz, kommt das {chance} vor.',
  ],
  ['less than one time in a thousand', 'weniger als einmal in tausend Fällen'],
  ['with probability {n}', 'mit Wahrscheinlichkeit {n}'],
  [
    'No reading is repeated under the same foot, load and set: lack of fit cannot be told from scatter.',
    'Kein Messwert ist unter demselben Fuß, derselben Last und in derselben Gruppe wiederholt: Ob das Gesetz die Kurve verfehlt, lässt sich von Streuung nicht unterscheiden.',
  ],
  [
    'The readings stand at {n} different places and the law has {p} free parameters: there is no place left over to miss.',
    'Die Messwerte stehen an {n} verschiedenen Stellen, und das Gesetz hat {p} freie Parameter: Es bleibt keine Stelle, die es verfehlen könnte.',
  ],
  [
    'The repeated readings agree to the last digit: they are copies, or the gauge is too coarse to show their scatter, and lack of fit cannot be judged by them.',
    'Die wiederholten Messwerte sind bis zur letzten Ziffer gleich: Es sind Kopien, oder das Messgerät ist zu grob für ihre Streuung, und ob das Gesetz passt, lässt sich daran nicht beurteilen.',
  ],
  // Residuals.
  ['Row {row}: {suspicions;}. It is left in.', 'Zeile {row}: {suspicions}. Sie bleibt in der Anpassung.'],
  [
    'it lies {n} standard deviations above the curve; among {count} readings one beyond {limit} comes by chance in one fit of twenty',
    'sie liegt {n} Standardabweichungen über der Kurve; unter {count} Messwerten liegt einer jenseits von {limit} zufällig in einer von zwanzig Anpassungen',
  ],
  [
    'it lies {n} standard deviations below the curve; among {count} readings one beyond {limit} comes by chance in one fit of twenty',
    'sie liegt {n} Standardabweichungen unter der Kurve; unter {count} Messwerten liegt einer jenseits von {limit} zufällig in einer von zwanzig Anpassungen',
  ],
  [
    "without it the parameters would move beyond the region that holds them with even odds (Cook's distance {n})",
    'ohne sie lägen die Parameter außerhalb des Bereichs, in dem sie mit gleichen Chancen liegen (Cook-Abstand {n})',
  ],
  [
    'the curve goes where it says (leverage {n}): no other reading checks it',
    'die Kurve geht dorthin, wo sie sagt (Hebelwirkung {n}): Kein anderer Messwert prüft sie',
  ],
  [
    'The sets differ more than their readings scatter (by chance with probability {n}): let each have more of its own than its softness, or try another law.',
    'Die Gruppen unterscheiden sich mehr, als ihre Messwerte streuen (zufällig mit Wahrscheinlichkeit {n}): Lassen Sie jeder mehr Eigenes als ihre Weichheit, oder versuchen Sie ein anderes Gesetz.',
  ],
  [
    'The sets differ more than their readings scatter (by chance with probability {n}): let each have a softness of its own.',
    'Die Gruppen unterscheiden sich mehr, als ihre Messwerte streuen (zufällig mit Wahrscheinlichkeit {n}): Lassen Sie jeder ihre eigene Weichheit.',
  ],
  [
    'Along the {word} the residuals bend ({pattern}, from the least {same} up): a law that bends otherwise would take up more; so much comes by chance with probability {n}.',
    'Nach steigenden Werten geordnet ({word}), krümmt sich, was übrig bleibt ({pattern}): Ein anders gekrümmtes Gesetz nähme mehr auf; so viel kommt zufällig mit Wahrscheinlichkeit {n}.',
  ],
  [
    'Along the {word} the residuals keep their sign for long stretches ({pattern}): so few changes come by chance with probability {n}.',
    'Nach steigenden Werten geordnet ({word}), behält, was übrig bleibt, über lange Strecken sein Vorzeichen ({pattern}): So wenige Wechsel kommen zufällig mit Wahrscheinlichkeit {n}.',
  ],
  [
    "In the order of reading the residuals drift; so much comes by chance with probability {n}. Look at the gauge's zero and at turf that was pressed before.",
    'In der Reihenfolge des Ablesens wandert, was übrig bleibt; so viel kommt zufällig mit Wahrscheinlichkeit {n}. Sehen Sie nach dem Nullpunkt des Messgeräts und nach Rasen, der schon gedrückt war.',
  ],
  [
    'The residuals do not look normal (probability {n}): a hint, from few readings or a coarse gauge it means little; intervals are then nominal.',
    'Was übrig bleibt, sieht nicht normalverteilt aus (Wahrscheinlichkeit {n}): ein Hinweis, der bei wenigen Messwerten oder grobem Messgerät wenig heißt; die Intervalle gelten dann nur dem Namen nach.',
  ],
  [
    '{missing} of {count} readings have no standard deviation: they are given the root mean square of the others',
    '{missing} von {count} Messwerten haben keine Standardabweichung: Sie bekommen das quadratische Mittel der übrigen',
  ],
  // What cannot be told.
  [
    'What these readings cannot tell is not known: the model has no slopes where the fit ended.',
    'Was diese Messwerte nicht sagen können, ist nicht bekannt: Das Modell hat keine Steigungen, wo die Anpassung endete.',
  ],
  ['{what} cannot be told from {others+}: {why}.', '{what} und {others} lassen sich nicht trennen: {why}.'],
  ['{what} cannot be told: {why}.', 'Nicht zu sagen: {what}; {why}.'],
  ['{names+} move together: {why}.', 'Ändern sich gemeinsam: {names}; {why}.'],
  [
    '{why} (one standard error along it is {n} %)',
    '{why} (ein Standardfehler in dieser Richtung sind {n} %)',
  ],
  [
    'the readings show no bend towards locking, and the search went to the end of its range',
    'die Messwerte zeigen keine Krümmung zum Anschlag hin, und die Suche ging bis ans Ende ihres Bereichs',
  ],
  [
    'the search ended at none of it, and would have gone on if it could',
    'die Suche endete bei nichts davon und wäre weitergegangen, wenn sie gekonnt hätte',
  ],
  [
    'the search ended at its bound, and would have gone on if it could',
    'die Suche endete an der Schranke und wäre weitergegangen, wenn sie gekonnt hätte',
  ],
  ['all readings are of one foot ({foot}); {why}', 'alle Messwerte stammen von einem Fuß ({foot}); {why}'],
  ['all readings are of one foot ({foot})', 'alle Messwerte stammen von einem Fuß ({foot})'],
  [
    'the feet are too much alike in size for this scatter',
    'die Füße sind für diese Streuung zu ähnlich groß',
  ],
  [
    'all drops in its set are read under one {word}, and only their differences count',
    'alle Absenkungen ihrer Gruppe sind bei einem einzigen Wert abgelesen ({word}), und nur ihre Unterschiede zählen',
  ],
  [
    'all drops in a set are read under one {word}, and only their differences count',
    'alle Absenkungen einer Gruppe sind bei einem einzigen Wert abgelesen ({word}), und nur ihre Unterschiede zählen',
  ],
  ['one place cannot fix {n} unknowns', 'eine Stelle kann {n} Unbekannte nicht festlegen'],
  [
    '{m} different places cannot fix {n} unknowns',
    '{m} verschiedene Stellen können {n} Unbekannte nicht festlegen',
  ],
  ['the greatest sinkage is {n} % of it', 'die größte Einsinktiefe ist {n} % davon'],
  ['all readings are of one {word}', 'alle Messwerte haben denselben Wert ({word})'],
  [
    'the loads differ by less than a factor of two ({n})',
    'die Lasten unterscheiden sich um weniger als das Doppelte ({n})',
  ],
  [
    'the pressures differ by less than a factor of two ({n})',
    'die Drücke unterscheiden sich um weniger als das Doppelte ({n})',
  ],
  [
    'softness is told at {p}, and the readings reach from {low} to {high}',
    'die Weichheit gilt bei {p}, und die Messwerte reichen von {low} bis {high}',
  ],
  ['no reading moves with it', 'kein Messwert ändert sich damit'],
  [
    'what tells them apart is smaller than the scatter of the readings',
    'was sie trennt, ist kleiner als die Streuung der Messwerte',
  ],
  ['the scatter of the readings is too large for it', 'die Streuung der Messwerte ist dafür zu groß'],
  ['the model has no slopes where the fit ended', 'das Modell hat keine Steigungen, wo die Anpassung endete'],
  // Laws side by side.
  ['Least AICc: {first}; above it {others+}.', 'Kleinstes AICc: {first}; darüber {others}.'],
  [
    'These readings do not tell {one} from {other}.',
    'Diese Messwerte unterscheiden die Gesetze nicht: {one} und {other}.',
  ],
  [
    '{larger} follows the readings better than {smaller}, which is its case of {within} ({by}).',
    'Das größere Gesetz ({larger}) folgt den Messwerten besser als das kleinere ({smaller}), sein Fall mit {within} ({by}).',
  ],
  [
    '{larger} follows the readings no better than {smaller}, its case of {within}, by more than chance ({by}).',
    'Das größere Gesetz ({larger}) folgt den Messwerten nicht besser als das kleinere ({smaller}), sein Fall mit {within}, als es der Zufall täte ({by}).',
  ],
  ['exponent 1', 'Hochzahl 1'],
  ['locking depth without end', 'unendlicher Grenztiefe'],
  [
    '{statistic}, probability {n}, halved at the edge',
    '{statistic}, Wahrscheinlichkeit {n}, am Rand halbiert',
  ],
  ['{statistic}, probability {n}', '{statistic}, Wahrscheinlichkeit {n}'],
  ['F {n}', 'F {n}'],
  ['χ² {n}', 'χ² {n}'],
  // Why there is no number.
  ['it was held, not fitted', 'war vorgegeben, nicht angepasst'],
  ['it was given, not fitted', 'war vorgegeben, nicht angepasst'],
  ['the search got no further than this', 'weiter kam die Suche nicht'],
  ['the search did not end at a minimum', 'die Suche endete nicht an einem Minimum'],
  ['the readings do not determine it', 'die Messwerte bestimmen es nicht'],
  ['the readings do not determine the parameters', 'die Messwerte bestimmen die Parameter nicht'],
  ['the readings do not determine every number of it', 'die Messwerte bestimmen nicht jede ihrer Zahlen'],
  [
    'as many parameters as readings leave no scatter to judge by',
    'so viele Parameter wie Messwerte lassen keine Streuung übrig, an der zu messen wäre',
  ],
  ['it lies at its bound', 'liegt an seiner Schranke'],
  [
    'the fitted turf has no answer to one of these loads',
    'der angepasste Rasen hat zu einer dieser Lasten kein Ergebnis',
  ],
  [
    'one set says nothing of how sets differ: measure more sets',
    'eine Gruppe sagt nichts darüber, wie sich Gruppen unterscheiden: Messen Sie mehr Gruppen',
  ],
  [
    'the turf that comes nearest bottoms out under row {row}',
    'der Rasen, der am nächsten kommt, ist unter Zeile {row} am Anschlag',
  ],
  [
    'the turf that comes nearest bottoms out under {n} of {count} readings, row {row} first',
    'der Rasen, der am nächsten kommt, ist unter {n} von {count} Messwerten am Anschlag, zuerst unter Zeile {row}',
  ],
  ['a law made by formulaLaw', 'ein von formulaLaw gemachtes Gesetz'],
  // How a search ended.
  ['converged: nothing is left of the residuals', 'am Ziel: Es bleibt nichts übrig'],
  [
    'converged: the next step would move no parameter by a noticeable part of itself',
    'am Ziel: Der nächste Schritt würde keinen Parameter merklich ändern',
  ],
  [
    'converged: the next step would move the parameters by a small part of their standard errors',
    'am Ziel: Der nächste Schritt würde die Parameter um einen kleinen Teil ihrer Standardfehler ändern',
  ],
  [
    'converged as closely as the rounding of the model allows',
    'am Ziel, so genau es die Rundung des Modells erlaubt',
  ],
  [
    'converged: every free parameter lies at its bound',
    'am Ziel: Jeder freie Parameter liegt an seiner Schranke',
  ],
  [
    'stopped: no smaller sum of squares could be found, though the slopes promise one',
    'es war keine kleinere Quadratsumme zu finden, obwohl die Steigungen eine versprechen',
  ],
  [
    'stopped: the sum of squares falls by next to nothing from step to step, as on a plateau or where a parameter runs off without end',
    'die Quadratsumme sinkt von Schritt zu Schritt um so gut wie nichts, wie auf einer Hochebene oder wo ein Parameter ohne Ende davonläuft',
  ],
  [
    'stopped: the residuals do not determine every parameter; some combination of them changes nothing',
    'die Messwerte bestimmen nicht jeden Parameter; eine Verbindung von ihnen ändert nichts',
  ],
  [
    'stopped: the sum of squares keeps falling as a parameter runs off without end',
    'die Quadratsumme sinkt immer weiter, während ein Parameter ohne Ende davonläuft',
  ],
  [
    'stopped: more than half of the residuals are zero, so that there is no scatter to measure the others by',
    'bei mehr als der Hälfte bleibt nichts übrig, sodass es keine Streuung gibt, an der die anderen zu messen wären',
  ],
  ['stopped: the iterations allowed are used up', 'die erlaubten Schritte sind aufgebraucht'],
  ['stopped: the model has no slopes here', 'das Modell hat hier keine Steigungen'],
  [
    'failed: the model has no answer at the start, nor at the others that were tried',
    'das Modell hat am Anfang kein Ergebnis, auch nicht an den anderen, die versucht wurden',
  ],
  ['stopped: {why}', '{why}'],
  ['failed: {why}', '{why}'],
]
