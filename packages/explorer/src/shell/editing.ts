// What is needed while a page is edited: fetched when a reader first asks for it.
export { listenArranging } from './arranging.ts'

import './add-entry.ts'
import './entry-editor.ts'
import './page-editor.ts'
