export { type Announcement, type Announcements, announce, listen } from './announce.ts'
export { isUnfinished, readNumber } from './readNumber.ts'
export { refusalSentence } from './refusalSentence.ts'
export { digit, printed, stepped } from './stepping.ts'

import './setting-list.ts'
