import { books } from './books.ts'
import { cautions, places } from './cautions.ts'
import {
  belonging,
  control,
  layers,
  naming,
  options,
  parts,
  refusals,
  settables,
  tableEditor,
} from './controls.ts'
import { editing } from './editing.ts'
import { entry } from './entry.ts'
import { failures } from './failures.ts'
import { files } from './files.ts'
import { kinds } from './kinds.ts'
import { lecture } from './lecture.ts'
import { map, mapFigure, mapWorkings } from './map.ts'
import { modelSays } from './modelSays.ts'
import { page } from './page.ts'
import { presentCase } from './presentCase.ts'
import { rack, rackFigure, rackSettables, rackWorkings, surfaces } from './rack.ts'
import { setting } from './setting.ts'
import { sheets } from './sheets.ts'
import { sideView, sideViewFigure, sideViewWorkings } from './sideView.ts'
import { list, percent } from './speaking.ts'
import { text } from './text.ts'
import { workingSays } from './workingSays.ts'

/**
 * What the book says of itself, in English, a file for each part of it: here the parts that every page needs, in
 * more.ts those of the kinds of entry that are fetched. Values come in formatted; sentences about them are made here.
 * Another language is another folder of the same shape.
 */
export const english = {
  language: 'en',
  percent,
  list,
  books,
  page,
  entry,
  editing,
  files,
  lecture,
  sheets,
  /** Long tables that few readers open are fetched when they do. */
  glossary: async () => (await import('./glossary.ts')).glossary,
  trust: async () => (await import('./trust.ts')).trust,
  kinds,
  settables: { ...settables, ...rackSettables },
  parts,
  layers,
  belonging,
  options,
  control,
  naming,
  tableEditor,
  refusals,
  failures,
  cautions,
  places,
  surfaces,
  sideView,
  map,
  modelSays,
  workingSays,
  rack,
  setting,
  text,
  presentCase,
  /** What a line of "how this is worked out" works out, by the name the kind gives it. */
  workings: {
    ...sideViewWorkings,
    ...mapWorkings,
    ...rackWorkings,
  } as Readonly<Record<string, string>>,
  /** What the figures say inside themselves. */
  figures: {
    rack: rackFigure,
    sideView: sideViewFigure,
    map: mapFigure,
  },
}
