import { fetchWords, LANGUAGES } from '../words/index.ts'
import type { Preferences } from './preferences.ts'
import type { SwardBook } from './sward-book.ts'

/** Another language: its words and every open book in it, fetched before any of them is changed. */
export async function changeLanguage(on: SwardBook, chosen: Preferences): Promise<void> {
  const { language } = chosen
  let tell: readonly (() => void)[]
  try {
    await fetchWords(language)
    tell = await Promise.all([...on.desks.values()].map(desk => desk.fetchIn(language)))
  } catch {
    on.said = on.reader.words.page.noLanguage(LANGUAGES[language])
    return
  }
  on.said = ''
  for (const now of tell) now()
  on.take({ ...on.preferences, language })
}
