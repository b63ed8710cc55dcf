import { svg } from 'lit'

/** Cut metal, at 45°: used for nothing else. Needs `hatchPattern` once in the figure. */
export const hatchPattern = svg`<defs><pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hair" d="M0 0V7" /></pattern></defs>`
