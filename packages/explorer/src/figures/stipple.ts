import { svg } from 'lit'

/** Not known: used for nothing else, so that it need not be explained twice. */
export const stipple = svg`<defs><pattern id="stipple" width="8" height="8" patternUnits="userSpaceOnUse"><circle class="stipple-dot" cx="2" cy="2" r="0.9" /><circle class="stipple-dot" cx="6" cy="6" r="0.9" /></pattern></defs>`
