import type { ToldBook } from '../told.ts'

/** Fit your own gauge, in German. */
export const ownGauge: ToldBook = {
  title: 'Passen Sie Ihr eigenes Messgerät an',
  pages: [
    {
      title: 'Eine Tabelle öffnen',
      lead: 'Ein Messgerät hinterlässt eine Tabelle: Hier steht, was eine Tabelle sagen muss, und was das Buch antwortet, wenn sie es nicht tut.',
      entries: {
        columns: {
          text: `Messwerte kommen als einfache Datei mit einer Zeile Namen, dann einer Zeile je Messwert. Ein Name sagt, was seine Spalte enthält und in welcher Maßeinheit: die Gruppe, also Parzelle oder Grün; den Fuß des Messgeräts oder die Walze, die dort stand; Last oder Druck; und die Einsinktiefe. Die Maßeinheit ist Teil des Namens, Zoll und Pfund sind also so gut wie Millimeter. Kommas, Semikolons oder Tabulatoren zwischen den Zellen, Dezimalpunkte oder Dezimalkommas: Das findet das Buch selbst heraus.

Diese Messwerte sind erfunden, als wäre jemand mit einem Messgerät mit zwei runden Füßen über zwei Grüns von Ellerby Hollow gegangen. Fügen Sie Ihre an deren Stelle ein, oder öffnen Sie eine Datei.`,
        },
        gauge: {
          title: 'Zwei Füße auf zwei Grüns',
          remarks: [
            'Ellerby Hollow Turf School. Alles hier ist erfunden: Keine Zahl wurde gemessen.',
            'Tiefenmessgerät mit zwei runden Füßen, 15 s nach dem Aufsetzen abgelesen; es zeigt 0,01 mm.',
          ],
        },
        understood: {
          text: `{gauge.count} Messwerte von {gauge.sets} Grüns wurden verstanden. Nichts geht wortlos verloren: Eine Zelle ohne Messwert wird gezählt, eine unlesbare mit Zeile und Spalte genannt. Probieren Sie es. Schreiben Sie ein Wort dorthin, wo eine Zahl steht, sehen Sie, was gesagt wird, und machen Sie es rückgängig.

Zweierlei sollten Sie im Feld aufschreiben, denn keine Rechnung bringt es zurück: wie lange Sie vor dem Ablesen gewartet haben, und was Sie mit dem einen sonderbaren Messwert gemacht haben.`,
        },
      },
    },
    {
      title: 'Ein Gesetz für den Rasen',
      lead: 'Eine Anpassung dreht die Frage um: Welcher Rasen, so gedrückt, hätte solche Messwerte ergeben?',
      entries: {
        law: {
          text: `Weichheit ist die Einsinktiefe eines Bretts, das so breit ist, dass sein Rand keine Rolle spielt, unter dem Gewicht von etwa einer Tonne je Quadratmeter. Jedes Grün hat seine eigene. Die Hochzahl sagt, ob der Rasen beim Drücken steifer wird, über eins, oder nachgibt, unter eins. Beide Grüns werden hier nach derselben gefragt: Zusammen sagen ihre Messwerte sie besser.

Diese erste Anpassung hält den Rasen für ein Bett aus Federn, die nichts voneinander wissen. Neben dem Fuß wird nichts getragen.`,
        },
        'left-over': {
          title: 'Lesen Sie, was übrig bleibt',
          text: `Die Kurve sieht recht gut aus. Sehen Sie nun auf den Streifen darunter, wo jeder Messwert so weit von der Kurve steht, wie er abgelesen wurde: erst unter dem einen Fuß, dann unter dem anderen. Wäre das bloße Streuung, lägen sie unter beiden Füßen auf beiden Seiten der Linie. Tun sie das?

Die Streuung, die bleibt, {plain.scatter}, ist mehr, als ein solches Messgerät von sich aus hätte, das auf ein hundertstel Millimeter abliest. Etwas in den Messwerten hat in diesem Gesetz keinen Platz.`,
        },
      },
    },
    {
      title: 'Was der Rand trägt',
      lead: 'Rasen ist eine Matte: Er wird auch neben dem Fuß hinuntergezogen, und der Rand eines kleinen Fußes trägt mehr von der Last, als seine Fläche sagt.',
      entries: {
        'edge-softness': {
          question:
            'Die Anpassung der vorigen Seite gab dem Rand nichts zu tragen und fand auf „mill green“ eine Weichheit von {plain.softness}. Jetzt darf der Rasen die Last über den Rand hinaus verteilen. Welche Weichheit findet die Anpassung dann?',
          because:
            'Das Messgerät zeigt dasselbe wie zuvor. Was der Rand trägt, trägt der Rasen unter dem Fuß nicht: Er wird weniger gedrückt, als wir dachten, und sinkt genauso tief ein. Also ist er weicher, {edged.softness}.',
        },
        'two-feet': {
          title: 'Warum zwei Füße',
          text: `Die Streuung, die bleibt, ist jetzt {edged.scatter}. Die Lastverteilung, also wie weit der Rasen Last über einen Rand hinaus trägt, ergibt sich zu {edged.spread}.

Ein kleiner Fuß hat viel Rand und wenig Fläche, ein breiter umgekehrt. Messwerte unter beiden können Weichheit und Lastverteilung trennen; Messwerte unter nur einem können es nicht, wie viele es auch sind. Nehmen Sie auf der ersten Seite die Zeilen eines Fußes heraus, und kommen Sie zurück: Die Anpassung sagt dann, was sie nicht mehr sagen kann.

Auch eine Walze hat Ränder, an ihren Enden und an jedem Steg einer gerillten. Eine Weichheit, die ohne Lastverteilung gefunden ist, ginge unter ihnen fehl.`,
        },
      },
    },
    {
      title: 'Die Platten anderer Leute',
      lead: 'Veröffentlichte Messwerte, um dieselben Werkzeuge daran zu erproben: eine Platte, in blanken Sand gedrückt, weit stärker als irgendetwas auf einem Grün.',
      entries: {
        source: {
          text: `Gemessen von R. Kruger (2026), Geotechnical Test Data Repository, doi 10.5281/zenodo.17584462, Lizenz CC BY 4.0, mit Kruger, Els und Hamersma (2023), Journal of Terramechanics 109:45-62. Die Einsinktiefen wurden dort abgelesen, wo jeder Druck zum ersten Mal überschritten ist, aus einer ausgedünnten Kopie der Aufzeichnungen; sie sind also etwas zu klein. Das ist die einzige Änderung. Über Rasen sagen sie nichts.`,
        },
        sand: {
          title: 'Eine Platte auf Sand',
          remarks: [
            'Gemessen von Kruger, R. (2026), Geotechnical Test Data Repository, doi 10.5281/zenodo.17584462, CC BY 4.0;',
            'siehe Kruger, Els und Hamersma (2023), Journal of Terramechanics 109:45-62. Platte von 0,018 m2 auf blankem Sand.',
            'Einsinktiefe beim ersten Überschreiten jedes Drucks, aus einer ausgedünnten Kopie der Aufzeichnungen, also etwas zu klein.',
          ],
        },
        'sand-lesson': {
          title: 'Worauf Sie achten sollten',
          text: `Lesen Sie den Vergleich der Gesetze. Zwei von ihnen haben einen Anschlag: Sie können nur steifer werden. Sand gibt unter einer Platte nach, sie werden also nicht besser als die Gerade, die jedes von ihnen ist, solange seine Grenztiefe außer Sicht liegt.

Sehen Sie dann wieder auf das, was übrig bleibt. Die tiefsten Messwerte entscheiden alles, weil für alle eine einzige Streuung angenommen ist, und eine Abweichung, die unten nichts ist, ist oben der ganze Messwert. Fügen Sie eine Spalte sd_mm hinzu, die mit der Einsinktiefe wächst, lassen Sie die Anpassung die Streuung so nehmen, wie die Messwerte sagen, und sehen Sie, wie weit sich die Hochzahlen verschieben. Wofür Sie die Streuung halten, kann mehr ausmachen als das Gesetz.`,
        },
      },
    },
    {
      title: 'Vom Rasen zur Höhe',
      lead: 'Niemand mäht eine Weichheit: Es zählt, wie sicher die Schnitthöhe ist, und woran sie hängt.',
      entries: {
        'hangs-on': {
          text: `Hier kommt der Rasen aus der Anpassung mit dem Rand, samt der Angabe, wie sicher seine Zahlen sind und wie sie zusammenhängen. Daneben streuen die Einstellung in der Werkstatt und die Waage. Macht die Anpassung den größeren Teil aus, helfen mehr Messwerte; macht es die Einstellung, hilft eine bessere Fühlerlehre, und ein weiterer Tag auf dem Grün hilft nicht.`,
        },
        next: {
          title: 'Was als Nächstes zu messen ist',
          text: `Fragen Sie unter der Anpassung der Seite „Was der Rand trägt“, was als Nächstes zu messen ist. Sie ordnet Lasten und Füße danach, wie sehr jeder die Höhe einengen würde, bevor jemand wieder hinausgegangen ist. Sie glaubt dem Gesetz: Ein Messwert weit jenseits dessen, womit die Walzen drücken, kann die Zahlen einengen und doch wenig über den Rasen unter einer Walze sagen.`,
        },
      },
    },
    {
      title: 'Schneiden, messen, vergleichen',
      lead: 'Eine nie geprüfte Anpassung ist eine Meinung: Mähen Sie einen Streifen, messen Sie ihn, und sehen Sie, ob die Höhen liegen, wo sie sollen.',
      entries: {
        strip: {
          title: 'Höhen nach einem Probestreifen',
          remarks: [
            'Ellerby Hollow Turf School. Alles hier ist erfunden: Keine Zahl wurde gemessen.',
            'Höhen des geschnittenen Grases nach einem Probestreifen, eine Zeile je Stelle.',
          ],
        },
        agreeing: {
          question:
            'Beide Walzen wurden auf beiden Grüns erprobt, zusammen {compared.strips} Streifen. Jedes Mittel hat ein Intervall, in dem es neunzehnmal von zwanzig liegen sollte, wenn die Anpassung stimmt. In wie vielen Streifen tut es das?',
          because:
            'Eines, das außerhalb liegt, ist kein Beweis gegen die Anpassung, und alle darin sind keiner für sie: Die Intervalle sind so breit, wie die Messwerte wenige waren. Im Mittel wurden die Streifen {compared.difference} neben dem Erwarteten geschnitten; weniger als nichts ist tiefer.',
        },
        disagree: {
          title: 'Wenn sie nicht übereinstimmen',
          text: `Fragen Sie zuerst, was an dem Tag anders war: Wasser, die Wartezeit vor dem Ablesen, Schnittgut an der Walze, eine andere Person. Dann, ob die Einheit die in diesem Buch ist: Wiegen Sie sie. Dann, ob der Rasen hinter der Walze sofort zurückfedert, wie dieses Buch annimmt; einer, der sich Zeit lässt, wird auf anderer Höhe geschnitten. Erst dann zweifeln Sie am Gesetz. Eine Höhe, die auf einem Grün danebenliegt und auf dem anderen stimmt, spricht für den Tag; eine, die mit einer Walze auf beiden danebenliegt, spricht für diese Walze.`,
        },
      },
    },
    {
      title: 'Ein Absatz Methodik',
      lead: 'Was jemand, der Ihren Bericht liest, braucht, um es zu wiederholen, und wo das Buch es für Sie geschrieben hat.',
      entries: {
        report: {
          text: `Unter jeder Anpassung steht ein Absatz für einen Bericht. Er nennt das Gesetz, was angepasst und was vorgegeben wurde, wie die Streuung genommen ist, und die weggelassenen Messwerte. Kopieren Sie ihn, und ergänzen Sie, was nur Sie wissen: das Messgerät und seine Teilung, die Wartezeit, das Wetter, wer die Stellen gewählt hat und wie.

Dieselbe Anpassung lässt sich als kurzes Skript für R oder Python mitnehmen, das ihre Zahlen mit dem Code anderer Leute noch einmal macht, wo das geht, und als Tabelle, wo es nicht geht. Bewahren Sie es bei den Daten auf.`,
        },
        'use-it': {
          title: 'Und dann verwenden Sie ihn',
          text: `Diese Kurve ist der gewählte Rasen, der bis jetzt geraten ist. Gehen Sie zurück zur Anpassung mit dem Rand, und sagen Sie „diesen Rasen verwenden“: Kurve, Karte, Regal und jede andere Seite, die Sie darauf bauen, stehen dann auf Ihren Messwerten, und jede sagt es, wenn mehr von ihr verlangt wird, als diese hergeben.

Die Messwerte des kleinen Fußes liegen auch dann über der Kurve. Ihr Druck ist Last durch Fläche, und einen Teil dieser Last hat der Rand getragen.`,
        },
      },
    },
  ],
}
