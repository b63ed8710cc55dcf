import { bookDoor } from './bookDoor.ts'
import { commandDoor } from './commandDoor.ts'
import type { Door } from './door.ts'
import { bookFormulaDoor, lawDoor } from './formulaDoor.ts'
import { linkDoor } from './linkDoor.ts'
import { pastedDoor } from './pastedDoor.ts'
import { scenarioDoor } from './scenarioDoor.ts'
import { sessionDoor, settingsDoor } from './settingsDoor.ts'
import { tableDoor } from './tableDoor.ts'

/** Every way in. */
export const doors: readonly Door[] = [
  scenarioDoor,
  bookDoor,
  tableDoor,
  linkDoor,
  lawDoor,
  bookFormulaDoor,
  commandDoor,
  pastedDoor,
  settingsDoor,
  sessionDoor,
]
