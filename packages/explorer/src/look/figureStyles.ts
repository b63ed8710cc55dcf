import { css } from 'lit'

/** Lines, marks and texts of every figure. Text size is set by the figure itself, which is laid out for it. */
export const figureStyles = css`
  svg.figure {
    display: block;
    overflow: visible;
    font-family: var(--face);
    font-variant-numeric: lining-nums tabular-nums;
    fill: none;
    stroke: none;
    stroke-linejoin: round;
  }
  svg.figure text {
    fill: var(--ink-2);
  }
  svg.figure text.strong,
  svg.figure tspan.strong {
    fill: var(--ink);
    font-weight: var(--weight-strong);
  }
  /* Casing: what lies under a text or mark stops 4 px short of it. */
  svg.figure text.on-paper {
    stroke: var(--paper);
    stroke-width: 8px;
    paint-order: stroke;
  }
  svg.figure text.on-ground {
    stroke: var(--ground);
    stroke-width: 8px;
    paint-order: stroke;
  }
  .outline {
    stroke: var(--ink);
    stroke-width: var(--w-line);
  }
  .thin {
    stroke: var(--ink-2);
    stroke-width: var(--w-thin);
  }
  .hair {
    stroke: var(--ink-3);
    stroke-width: var(--w-hair);
  }
  .centre {
    stroke: var(--ink-3);
    stroke-width: var(--w-hair);
    stroke-dasharray: 9 2.5 2 2.5;
  }
  .hidden {
    stroke: var(--ink-2);
    stroke-width: var(--w-thin);
    stroke-dasharray: 4 3;
  }
  .dotted {
    stroke: var(--ink-3);
    stroke-width: var(--w-hair);
    stroke-dasharray: 1.5 3;
  }
  .carried-on {
    stroke-dasharray: 7 4;
  }
  .bears {
    fill: var(--ink-2);
  }
  .axis,
  .contour {
    stroke: var(--ink-2);
    stroke-width: var(--w-thin);
  }
  .grid {
    stroke: var(--rule);
    stroke-width: var(--w-thin);
  }
  .surface {
    stroke: var(--ink);
    stroke-width: var(--w-ground);
  }
  .grass {
    stroke: var(--ink-3);
    stroke-width: var(--w-hair);
    opacity: 0.75;
  }
  .edge-line {
    stroke: var(--present);
    stroke-width: var(--w-thin);
    stroke-dasharray: 16 3 3 3;
  }
  .load {
    stroke: var(--ink);
    stroke-width: var(--w-line);
  }
  .solid {
    fill: var(--paper);
  }
  .ground {
    fill: var(--ground);
  }
  .head {
    fill: var(--ink-2);
  }
  .load-head,
  .dot {
    fill: var(--ink);
  }
  .dot {
    stroke: var(--paper);
    stroke-width: 1.5px;
  }
  .leader-end {
    fill: var(--ink-3);
  }
  .present {
    stroke: var(--present);
    stroke-width: var(--w-present);
  }
  .present-cross {
    stroke: var(--present);
    stroke-width: var(--w-thin);
  }
  .cross-casing {
    stroke: var(--paper);
    stroke-width: 3.5px;
    opacity: 0.8;
  }
  .present-fill {
    fill: var(--present);
  }
  .measured {
    stroke: var(--measured);
    stroke-width: var(--w-line);
  }
  .measured-fill {
    fill: var(--measured);
  }
  /* Where a curve, or one more reading, lies with 95 %. */
  .band {
    fill: var(--measured-wash);
  }
  .band-edge,
  .one-more {
    stroke: var(--measured);
    stroke-width: var(--w-hair);
  }
  .one-more {
    stroke-width: var(--w-thin);
    stroke-dasharray: 1.5 3;
  }
  .beforehand {
    stroke: var(--ink);
    stroke-width: var(--w-line);
  }
  .cased {
    stroke: var(--paper);
    stroke-width: 8px;
  }
  .plate {
    fill: var(--paper);
    stroke: var(--ink-3);
    stroke-width: var(--w-hair);
  }
  .on-pale {
    stroke: var(--on-pale);
    stroke-width: var(--w-thin);
  }
  .on-deep {
    stroke: var(--on-deep);
    stroke-width: var(--w-thin);
  }
  .sink-1 {
    fill: var(--sink-1);
  }
  .sink-2 {
    fill: var(--sink-2);
  }
  .sink-3 {
    fill: var(--sink-3);
  }
  .sink-4 {
    fill: var(--sink-4);
  }
  .sink-5 {
    fill: var(--sink-5);
  }
  .sink-6 {
    fill: var(--sink-6);
  }
  .sink-7 {
    fill: var(--sink-7);
  }
  .sink-8 {
    fill: var(--sink-8);
  }
  .tolerance {
    fill: var(--ground);
  }
  .usual {
    stroke: var(--ink-3);
    stroke-width: 3px;
  }
  .measured-bar {
    fill: var(--measured);
  }
  .stipple-dot {
    fill: var(--ink-3);
  }
  .reach {
    fill: transparent;
    pointer-events: all;
  }
  [data-handle] {
    cursor: grab;
    touch-action: none;
  }
  [data-handle]:active {
    cursor: grabbing;
  }
  [data-handle]:focus-visible {
    outline: none;
  }
  [data-handle]:focus-visible .reach {
    stroke: var(--ink);
    stroke-width: 2px;
  }
  /* The widest layout is wider than A4; at 86 % its text is still above 8 pt. */
  @media print {
    svg.figure[viewBox] {
      max-width: 100%;
      height: auto;
    }
  }
  @media (forced-colors: active) {
    svg.figure {
      forced-color-adjust: none;
    }
  }
`
