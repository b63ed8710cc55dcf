type CautionValues = { readonly value: string; readonly limit: string }

/** Facts that ride on a result. `where` is already in this language. */
export const cautions = {
  'deep in the arc': ({ value, limit }: CautionValues) =>
    `die Einsinktiefe beträgt ${value} des Walzenradius; über ${limit} trägt die Parabel mehr als der wirkliche Kreis.`,
  'steep at the land': ({ value, limit }: CautionValues) =>
    `der Rasen hängt mit einer Steigung von ${value} in die Rille; über ${limit} ist das Modell des Filzes überdehnt.`,
  'wide spread under grooves': ({ value, limit }: CautionValues) =>
    `der Rasen verteilt die Last über das ${value}\u2011Fache der Kontaktlänge; über ${limit} kann das schnelle Modell der Rillenwalze um mehr als 2 % danebenliegen.`,
  'grooves while mowing': () =>
    'hinter einer Rillenwalze trägt das Modell auf Rasen, der Last verteilt, 2 bis 9 % zu wenig.',
  'large strain': ({ value, limit }: CautionValues) =>
    `die Einsinktiefe beträgt ${value} der Schichtdicke; über ${limit} tragen wirkliche Schichten mehr als das Modell.`,
  'near locking': ({ value, limit }: CautionValues) =>
    `die Einsinktiefe beträgt ${value} der Grenztiefe; über ${limit} hängt das Ergebnis allein an dieser Tiefe.`,
  extrapolated: ({ value, limit }: CautionValues) =>
    `der Druck erreicht ${value}, gemessen wurde nur bis ${limit}: Die Kurve ist dort bloß fortgesetzt.`,
  'below the fitted pressures': ({ value, limit }: CautionValues) =>
    `der Druck beträgt ${value}, angepasst wurde der Rasen erst ab ${limit}: Die Kurve ist dort bloß fortgesetzt.`,
  'corners left out': () =>
    'was der Rasen neben den Ecken einer rechteckigen Platte trägt, bleibt außer Acht: Die Platte trägt etwas mehr.',
  'height not given': ({ value }: CautionValues) =>
    `die Höhe des Schwerpunkts ist nicht angegeben; genommen wird die der Vorderachse, ${value}.`,
  'in a track': () =>
    'sie läuft in einer schon gedrückten Spur; wie diese seitlich endet und wie Rillen darin liegen, wenn der Rasen Last verteilt, ist geschätzt.',
  'turns about itself': ({ value, limit }: CautionValues) =>
    `eine Kurve von ${value} hat ihren Mittelpunkt unter der Walze, die ${limit} nach jeder Seite reicht: Ein Ende läuft rückwärts.`,
  'near slipping': ({ value, limit }: CautionValues) =>
    `der Rollwiderstand braucht ${value} dessen auf, was die Reibung hält; über ${limit} ist die Walze kurz davor, ohne Drehung zu rutschen.`,
  'cuts into the turf': ({ value }: CautionValues) =>
    `die Schneidkante steht auf ${value}, an oder unter der Rasenoberfläche: Sie würde den Rasen skalpieren.`,
} as Readonly<Record<string, (values: CautionValues) => string>>

export const places = { 'front roller': 'Vorderwalze', 'rear roller': 'Hinterwalze' } as Readonly<
  Record<string, string>
>
