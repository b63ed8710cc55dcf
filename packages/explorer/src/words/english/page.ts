import type { Values } from './speaking.ts'

export const page = {
  of: (total: number) => `of ${total}`,
  atHand: 'Always at hand',
  units: 'Units',
  unitSystems: { metric: 'mm, kg', US: 'in, lb' },
  language: 'Language',
  noLanguage: (name: string) => `The words of ${name} could not be fetched: is there a connection?`,
  theme: 'Paper',
  themes: { system: 'as the device', light: 'light', dark: 'dark', projector: 'projector' },
  print: 'Print',
  undo: 'Undo',
  redo: 'Redo',
  offline: 'This page is kept in this browser and opens without a network.',
  newer:
    'A newer edition of this page is here: it comes when every window of it has been closed and it is opened again.',
  noView: 'This view could not be fetched: is there a connection?',
  changes: 'Your changes',
  restore: 'Back to this book’s values',
  saveFile: 'Save as a file',
  openFile: 'Open a file',
  kept: 'What you change is kept in this browser.',
  notKept: 'This browser keeps nothing for later: save a file if you want your values back.',
  pages: 'Pages',
  earlierPage: 'earlier page',
  laterPage: 'later page',
  untitledPage: (number: number) => `Page ${number}`,
  untitledBook: 'A book without a title',
  problemAt: ({ path, expected, received }: Values<'path' | 'expected' | 'received'>) =>
    `${path}: expected ${expected}, but found ${received}.`,
  trust: 'How far to trust this',
  trustText:
    'These are estimates from a model of turf, not readings. They are as good as the softness that goes in, and they say nothing of injury or playing quality. Check with a gauge on the turf before mowing.',
  invented:
    'Ellerby Hollow Turf School, its units, rollers and greens are invented; so is every number set in this book, but for readings that name their source.',
  safety: 'Before you reach under a unit',
  safetyText:
    'Cylinder and bottom blade cut even when turned by hand. Stop the engine or isolate the battery. Wear cut-resistant gloves. Lift with help or a hoist; never work under a unit held by a jack. Follow the machine’s own manual and local rules, and let a competent person do what needs one.',
}
