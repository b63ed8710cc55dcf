import type { Values } from './speaking.ts'

const minutes = (count: number): string => (count === 1 ? '1 minute' : `${count} minutes`)

/** What is said in a lecture, on the wall and on the teacher's sheet. */
export const lecture = {
  lecture: 'Lecture',
  step: ({ book, number, total }: Values<'book' | 'number' | 'total'>) => `${book}, ${number} of ${total}`,
  walk: ({ number, total }: Values<'number' | 'total'>) => `Step ${number} of ${total}`,
  earlier: 'earlier',
  later: 'later',
  leave: 'leave',
  overflows: 'The slide, which goes on below',
  sheet: 'teacher’s sheet',
  sheetTitle: 'Teacher’s sheet',
  blocked:
    'This browser let no window open: the sheet stands under the slide instead, where whoever sees the wall can see it.',
  notes: 'Notes',
  noNotes: 'No notes for this step.',
  next: 'Next',
  last: 'This is the last step.',
  nextQuestion: 'Next question',
  noPlan: 'This book plans no minutes.',
  planned: ({ minutes: total, after }: { readonly minutes: number; readonly after: number }) =>
    `${minutes(total)} are planned; the steps after this one take ${minutes(after)}. Time begins with the first turn.`,
  left: ({ minutes: left, after }: { readonly minutes: number; readonly after: number }) =>
    left < 0
      ? `The plan is over by ${minutes(-left)}; the steps after this one take ${minutes(after)}.`
      : `${minutes(left)} left in the plan; the steps after this one take ${minutes(after)}.`,
  begin: 'begin the time now',
  beginAgain: 'begin the time again',
  keys: 'Page Down and Page Up turn here and on the slide, and so does a clicker. On the slide the left and right arrow turn as well unless a control has the focus, and Escape leaves.',
}
