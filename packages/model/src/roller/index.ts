export {
  type GroovedSurface,
  isGrooved,
  type Roller,
  rollerProblems,
  type Surface,
  surfaceProblems,
} from './roller.ts'
