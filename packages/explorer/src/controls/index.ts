export { type Announcement, type Announcements, announce, listen } from './announce.ts'
export { fileName, handOver } from './handOver.ts'
export { paleStyles } from './paleStyles.ts'
export { printed, stepped } from './stepping.ts'
export { PAPER_WIDTH, watchWidth } from './watchWidth.ts'
export { wordStyles } from './wordStyles.ts'

import './setting-list.ts'
