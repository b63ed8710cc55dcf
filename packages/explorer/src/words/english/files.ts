import type { Values } from './speaking.ts'

/** What is said of files, links, kept books and other tabs. */
export const files = {
  link: 'A link to these values',
  linkAsText: 'These values as text',
  linkLabel: 'The link',
  textLabel: 'The values, as a scenario file holds them',
  copy: 'copy',
  copied: 'Copied.',
  notCopied: 'It could not be copied from here: select the text and copy it yourself.',
  linkNote: 'Whoever opens it sees this page with your values. Readings need a file.',
  textNote:
    'This page has no address that others could open. Saved as a file, the text opens here, and the command line reads it.',
  code: 'The link as a code for a camera',
  codeUnfetched: 'What draws the code could not be fetched: is there a connection?',
  tooLong: 'These values are too many for a code: pass on the link or a file.',
  unopened: 'This could not be opened; nothing here has changed.',
  damaged: 'Not all of this could be read. What could is shown; the rest, in full:',
  problemAt: ({ path, expected, received }: Values<'path' | 'expected' | 'received'>) =>
    `${path}: expected ${expected}, but found ${received}.`,
  newer: (version: string) =>
    `This file was written by a later Swardsink: it is of version ${version}, and this program reads version 1. Nothing was opened, your book is as it was, and the file is untouched: open it with the later one.`,
  borrowedValues:
    'The file holds no sound values of a unit and its turf: its pages are shown with the values you had.',
  borrowedPages: 'The file holds no pages: its values are shown on the pages you had.',
  nothingInIt: 'There is nothing in this file that could be shown.',
  opened: (title: string) => `Opened: ${title}.`,
  openedInPart: (title: string) => `This is “${title}”, as far as it could be read.`,
  backTo: (title: string) => `back to “${title}”`,
  dismiss: 'all right',
  otherTab:
    'This book was changed in another tab or window. What you change here is kept beside it, under a name of its own.',
  keptApart: (name: string) =>
    `Another tab changed this book meanwhile. Both are kept: yours is now “${name}” among the books of this browser.`,
  openOther: 'open the other’s',
  storeFull:
    'This browser has no room left: what you change from now on is not kept. Save a file, or forget a book you no longer need.',
  foreignAddress: (text: string) => `The address ends in “${text}”, which means nothing here.`,
  noSuchBook: (name: string) =>
    `No book called “${name}” ships with this or is kept in this browser. This is the first one.`,
  earlierEdition:
    'This book has a newer edition. What you had changed in the older one is kept as a book of your own:',
  linkedOver: 'These are the values of the link you opened. Undo brings back those you had.',
  books: 'Books',
  booksLead: 'The books that come with this, and those you keep here.',
  yourBooks: 'Kept in this browser',
  changedOn: (date: string) => `changed ${date}`,
  forget: 'forget',
  forgetWhat: (title: string) => ` ${title}`,
  forgotten: (title: string) => `Forgotten: ${title}.`,
}
