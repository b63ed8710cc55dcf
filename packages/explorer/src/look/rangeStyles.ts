import { css } from 'lit'

/**
 * A native range laid over a graduated line. The thumb is 24 px wide, so its tip travels from 12 px to 12 px
 * short of the end: the ticks of `settingScale` are placed by the same rule.
 */
export const rangeStyles = css`
  input[type='range'] {
    appearance: none;
    display: block;
    width: 100%;
    height: var(--target);
    margin: 0;
    background: transparent;
    cursor: pointer;
  }
  input[type='range']::-webkit-slider-runnable-track {
    height: var(--target);
    background: transparent;
  }
  input[type='range']::-moz-range-track {
    height: var(--target);
    background: transparent;
  }
  input[type='range']::-webkit-slider-thumb {
    appearance: none;
    width: 24px;
    height: var(--target);
    border: 0;
    border-radius: 0;
    background: var(--present);
    clip-path: polygon(calc(50% - 7px) calc(100% - 12px), calc(50% + 7px) calc(100% - 12px), 50% 100%);
    forced-color-adjust: none;
  }
  input[type='range']::-moz-range-thumb {
    width: 24px;
    height: var(--target);
    border: 0;
    border-radius: 0;
    background: var(--present);
    clip-path: polygon(calc(50% - 7px) calc(100% - 12px), calc(50% + 7px) calc(100% - 12px), 50% 100%);
    forced-color-adjust: none;
  }
  input[type='range']:focus-visible {
    outline: 2px solid var(--ink);
    outline-offset: 2px;
  }
`
