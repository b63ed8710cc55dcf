import type { ToldBook } from '../told.ts'

/** Why a heavier roller cuts lower, in German. */
export const heavierRoller: ToldBook = {
  title: 'Warum eine schwerere Walze tiefer schneidet',
  pages: [
    {
      title: 'In der Werkstatt eingestellt, auf dem Rasen geschnitten',
      lead: 'Die Schnitthöhe wird in der Werkstatt eingestellt, doch die Walzen sinken in den Rasen ein: Sehen Sie, wie weit, und auf welcher Höhe das Gras wirklich geschnitten wird.',
      entries: {
        text: {
          text: `Mit {frontRoller.mass} drückt die Vorderwalze mit {front.load} und sinkt {front.sinkage} ein; die Hinterwalze drückt mit {rear.load} und sinkt {rear.sinkage} ein. Die Schneidkante liegt dazwischen und geht um {drop} nach unten.

{oneKilogram.mass} mehr vorn würden den Schnitt um {oneKilogramMore.drop} senken; doppelt so weicher Rasen um {twiceAsSoft.drop}.`,
        },
        heavier: {
          question:
            'Die Walze „peg 2“ im Regal ist wie „peg 1“, nur schwerer: {rollers.peg 2.mass} statt {rollers.peg 1.mass}. Jetzt schneidet die Einheit auf {effectiveHeight}. Sagen Sie es, bevor Sie ins Regal schauen: Auf welcher Höhe würde sie mit „peg 2“ schneiden?',
          because:
            'Die Vorderwalze würde mit {then.front.load} statt {front.load} drücken und {then.front.sinkage} statt {front.sinkage} einsinken. Eine schwerere Walze schneidet tatsächlich tiefer, aber um weniger, als die meisten sagen. Warum es so wenig ist, steht auf der nächsten Seite.',
        },
      },
    },
    {
      title: 'Eine runde Walze macht sich ihr Bett selbst',
      lead: 'Eine Walze ist rund: Je tiefer sie einsinkt, desto breiter wird das Bett, in dem sie liegt. Was heißt das für das nächste Newton?',
      entries: {
        text: {
          text: `Legen Sie ein flaches Brett auf Rasen, der wie eine Feder antwortet, und belasten Sie es: Es sinkt im Takt der Last. Eine Walze ist nicht flach. Sagen Sie, was Sie von ihrer Kurve erwarten, bevor Sie sie ansehen.`,
        },
        loaded: {
          question:
            'An die Achse der Vorderwalze werden Gewichte gehängt, bis sie mit {then.front.load} statt {front.load} auf das Grün drückt. Wievielmal so tief wie jetzt sinkt sie ein?',
          because:
            'Sie sinkt {then.front.sinkage} statt {front.sinkage} ein: tiefer, aber nicht im Takt der Last.',
        },
        'seat-why': {
          title: 'Warum die Kurve sich krümmt',
          text: `Das Bett reicht so weit vor und hinter die Achse, wie der Bogen der Walze in den Rasen taucht. Diese Länge wächst mit der Quadratwurzel der Einsinktiefe. Auch der Druck wächst, auf federndem Rasen im Takt der Einsinktiefe.

So wächst die Last, die ein Bett tragen kann, mit der Einsinktiefe hoch drei Halbe. Umgekehrt: Die Einsinktiefe wächst mit der Last hoch zwei Drittel. Dieses Grün wird außerdem steifer, je weiter man es drückt; das krümmt die Kurve noch etwas mehr.`,
        },
        'seat-length': {
          text: `Allein aus Durchmesser und Einsinktiefe ist das Bett {seat} lang. Der Rasen knapp davor und dahinter wird von der Walze mit hinuntergezogen, das Metall selbst berührt ihn also auf etwas weniger Länge.

Eine Walze mit anderem Durchmesser macht ein anderes Bett. Ändern Sie ihn auf der ersten Seite, und kommen Sie zurück.`,
        },
      },
    },
    {
      title: 'Zwei Walzen tragen sie',
      lead: 'Die Einheit steht auf zwei Walzen, und die Schneidkante hängt dazwischen: Es kommt darauf an, wo das Gewicht ist, nicht nur, wie viel es ist.',
      entries: {
        balance: {
          text: `Der Aufbau dieser Einheit wiegt {body.weight}. Sein Schwerpunkt liegt {body.at} hinter der Achse der Vorderwalze; die Hinterachse liegt {unit.wheelbase} hinter ihr. Jede Walze trägt sich selbst und ihren Teil des Aufbaus, und der Teil ist umso größer, je näher der Schwerpunkt bei ihr liegt.`,
        },
        moved: {
          question:
            'Ein schwerer Teil des Aufbaus wird nach vorn versetzt, und der Schwerpunkt geht mit: {then.body.at} hinter der Vorderachse statt {body.at}. Jetzt drückt die Vorderwalze mit {front.load}. Womit drückt sie dann?',
          because:
            'Was die Vorderwalze übernimmt, gibt die hintere ab: dort {then.rear.load} statt {rear.load}. Zusammen drücken sie immer mit dem Gewicht der ganzen Einheit.',
        },
        edge: {
          title: 'Wohin die Schneidkante geht',
          text: `Die Vorderwalze ist {front.sinkage} eingesunken, die hintere {rear.sinkage}. Die Schneidkante steht {unit.edge} hinter der Vorderachse und geht um eine Mischung aus beidem nach unten, jedes gezählt nach seiner Nähe: {drop}.

Gewicht in einer Walze ist etwas anderes als Gewicht im Aufbau. Es sitzt auf ihrer eigenen Achse und ändert an der anderen so gut wie nichts. Machen Sie die Vorderwalze schwerer, und beobachten Sie die Last hinten.`,
        },
      },
    },
    {
      title: 'Gewicht oder Rasen?',
      lead: 'Rasen bleibt nie lange derselbe. Regen, Filz und Topdressing ändern, wie weich er ist, und damit die Schnitthöhe.',
      entries: {
        softness: {
          text: `Weichheit wird als Tiefe angegeben: wie weit ein breites, flaches Brett unter dem Gewicht von etwa einer Tonne je Quadratmeter einsinkt. Auf diesem Grün sind das {turf.softness}.`,
        },
        softer: {
          question:
            'Nach einer trockenen, windigen Woche ist das Grün halb so weich: {then.turf.softness} statt {turf.softness}. Niemand rührt die Einheit an, die jetzt auf {effectiveHeight} schneidet. Auf welcher Höhe schneidet sie dann?',
          because:
            'Die Schneidkante geht um {then.drop} statt {drop} nach unten. Halten Sie das neben Ihre Antwort zur schwereren Walze: Jene brachte einige Newton mehr unter eine Walze, während festerer Rasen jedem Newton unter beiden weniger nachgibt. Eine nasse Woche, die das Grün doppelt so weich macht, nimmt noch mehr, als diese gibt: {twiceAsSoft.drop}.',
        },
        lines: {
          title: 'Lesen Sie die Karte an ihren Linien',
          text: `Entlang einer Linie der Karte schneidet die Einheit immer auf derselben Höhe. Folgen Sie einer mit dem Finger: Wie viel leichter muss die Walze werden, um ein wenig mehr Weichheit auszugleichen?

Bewegen Sie dann die Marke, einmal entlang der Masse und einmal entlang der Weichheit, und sehen Sie, was von beidem schneller über Linien führt. Darum sollten Sie sich zuerst kümmern.`,
        },
      },
    },
    {
      title: 'Die Oberfläche, nicht das Gewicht',
      lead: 'Eine glatte Walze trägt ihre Last auf dem ganzen Mantel. Rillen überlassen die Arbeit den Stegen dazwischen.',
      entries: {
        grooves: {
          text: `Die Walze „peg 3“ im Regal hat Rillen: Stege von {rollers.peg 3.land} Breite, alle {rollers.peg 3.pitch} einer. Sie wiegt {rollers.peg 3.mass}; „peg 1“, glatt und genauso dick, wiegt {rollers.peg 1.mass}.`,
        },
        grooved: {
          question:
            'Die Walze „peg 3“ kommt an die Einheit, und die Einstellhöhe bleibt, wie sie ist. Wo schneidet sie, verglichen mit {effectiveHeight} jetzt?',
          options: [
            'Höher, denn sie ist leichter',
            'Auf derselben Höhe',
            'Tiefer, denn weniger Mantel trägt',
          ],
          because:
            'Sie würde auf {then.effectiveHeight} schneiden und {then.front.sinkage} einsinken. Die Stege sind nur ein Teil des Mantels. Trotzdem gibt der Rasen nicht nach, als trügen sie allein: Der Filz dazwischen wird mit hinuntergezogen und hängt tragend an ihren Kanten.',
        },
        lands: {
          title: 'Was die Stege übrig lassen',
          text: `Montieren Sie „peg 3“, und sehen Sie quer durch ihren Mantel, dann „peg 5“ mit den schmalen Stegen. Was die jetzt montierte Walze trägt, als Teil dessen, was eine glatte in dieser Tiefe trüge: {across.bearingFraction}. Eins wäre alles.

Das ist Mechanik, und das letzte Wort hat ein Messgerät auf dem Grün. Ein wiederholter Versuch, der gerillte und glatte Walzen in Schnitttiefen vergleicht, fand sich nicht im Druck. Wenn Sie ein Regal und ein Grün haben, könnten Sie ihn machen.`,
        },
      },
    },
    {
      title: 'Die Höhe zurückgeben',
      lead: 'Regen, oder eine Walze, die des Schnittbilds wegen gewählt ist: Was sie dem Schnitt nehmen, kann die Einstellung zurückgeben.',
      entries: {
        back: {
          question:
            'Es regnet, und das Grün wird um die Hälfte weicher: {then.turf.softness} statt {turf.softness}. Um wie viel müssen Sie die Schneidkante in der Werkstatt höher stellen, damit das Gras auf derselben Höhe wie jetzt geschnitten wird?',
          because:
            'Die Schneidkante ginge um {then.drop} statt {drop} nach unten. Was der Rasen nimmt, muss die Einstellung geben: Stellen Sie die Kante um den Unterschied höher. Mit einer anderen Walze ist es genauso, und das Regal sagt für jede, was einzustellen ist.',
        },
        learnt: {
          title: 'Was Sie jetzt sagen können',
          text: `Eine schwerere Walze schneidet tiefer, weil sie stärker drückt; ihr rundes Bett hält das klein. Wo das Gewicht sitzt, entscheidet, wie es sich verteilt, und die Schneidkante folgt der Walze, die näher liegt. Weicherer Rasen senkt den Schnitt mehr, als es die Walzen dieses Regals mit ihrem Gewicht tun. Rillen senken ihn ganz ohne Gewicht. Und die Einstellung kann zurückgeben, was sie alle nehmen.

Sehen Sie sich Ihre sechs Vorhersagen zusammen auf dem Abgabeblatt an, am Fuß dieser Seite. Wo lagen Sie am weitesten daneben, und was hatten Sie sich gedacht?`,
        },
        'go-on': { title: 'Gehen Sie von hier weiter' },
        'ask-on': {
          text: `Stellen Sie die Einheit auf Mähen. Dann wird nur die Hälfte des Betts vor der Achse in frischen Rasen gedrückt; dahinter trägt, was zurückfedert. Schneidet sie tiefer oder höher als im Stehen?

Machen Sie die Grenztiefe Schritt für Schritt kleiner, und beobachten Sie die Höhe. Was sagt das Buch, wenn der Rasen nicht weiter nachgeben kann, und was sagt es nicht?

Das ist ein Modell des Rasens, kein Messwert. Seine Antwort ist so gut wie die Weichheit, die hineingeht, und es weiß nichts von Ballrolllänge, Krankheit oder Verschleiß.`,
        },
      },
    },
  ],
}
