/** Words among the signs of an equation or of the values put into it, longer ones before what they contain. */
const FRAGMENTS: readonly (readonly [RegExp, string])[] = [
  [/wanted \+ drop − not yet recovered/g, 'gewünscht + Absenkung − noch nicht erholt'],
  [/h_b − drop \+ not yet recovered/g, 'h_b − Absenkung + noch nicht erholt'],
  [/h_b − drop\b/g, 'h_b − Absenkung'],
  [/^drop = (.*) \+ tilt$/g, 'Absenkung = $1 + Kippen'],
  [/^change = h_b − h_b,old/g, 'Änderung = h_b − h_b,alt'],
  [/h_e,in hand/g, 'h_e,gewählt'],
  [/a_ahead/g, 'a_vorn'],
  [/a_behind/g, 'a_hinten'],
  [/([mx])_body/g, '$1_Aufbau'],
  [/− rear roller\)/g, '− Hinterwalze)'],
  [/− rollers$/g, '− Walzen'],
  [/q_pitch/g, 'q_Teilung'],
  [/q_quick/g, 'q_schnell'],
  [/\bfront: (build-up|runout)/g, 'vorn: $1'],
  [/\brear: (build-up|runout)/g, 'hinten: $1'],
  [/\bbuild-up (?=[(c])/g, 'Anhaftung '],
  [/\brunout (?=[(c])/g, 'Rundlauffehler '],
  [/; every π D$/g, '; alle π D'],
  [/, every π ×/g, ', alle π ×'],
  [/→ least$/g, '→ min'],
  [/\) from W_f/g, ') aus W_f'],
  [/ of them, to (.+) and (?=\S+$)/g, ' davon, bis $1 und '],
  [/; with the tilt /g, '; mit dem Kippen '],
  [/, and (\S+) of (\S+) on the rear$/g, ', und $1 von $2 hinten'],
  [/\bshift\b/g, 'Versatz'],
  [/; root mean square /g, '; quadratisches Mittel '],
  [/, standard error /g, ', Standardfehler '],
  [/ free; in (\d+) steps$/g, ' frei; in $1 Schritten'],
  [/ on (\d+)$/g, ' bei $1'],
  [/ from what was expected$/g, ' gegenüber dem Erwarteten'],
  [/ to (\S+), n =/g, ' bis $1, n ='],
  [/(?<=\d)\.(?=\d)/g, ','],
]

/** Words among the signs of an equation, in German, and decimals of those values that no formatter has seen. */
export const workingSays = (text: string): string =>
  FRAGMENTS.reduce((said, [english, german]) => said.replace(english, german), text)
