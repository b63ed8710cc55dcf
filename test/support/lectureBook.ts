import { heavierRoller } from '../../packages/explorer/src/books/heavierRoller.ts'

const [first] = heavierRoller.pages

/** A short book with a plan, as a trainer would write one: three steps, and a question among them. */
export const lectureBook = {
  ...heavierRoller,
  title: 'A short hour at Ellerby Hollow',
  pages: [
    {
      title: 'On the bench',
      lead: 'What is set is not what is cut.',
      notes: 'Bring the invented unit and a pad.\n\nLet them feel the edge move.',
      minutes: 7,
      entries: (first?.entries ?? []).slice(0, 1),
    },
    {
      title: 'Say it first',
      lead: '',
      entries: [
        {
          kind: 'question' as const,
          id: 'q1',
          question: 'How deep does the front roller sink?',
          asks: 'front.sinkage',
          minutes: 4,
          notes: 'Wait until everybody has written a number down.',
        },
        { kind: 'map' as const, minutes: 9 },
      ],
    },
  ],
}

/** As a file that a reader opens. */
export const lectureFile = {
  name: 'lecture.swardsink.json',
  mimeType: 'application/json',
  buffer: Buffer.from(JSON.stringify(lectureBook)),
}
