const SVG = 'http://www.w3.org/2000/svg'
/** Share of a line of text that lies above its foot, as in most faces. */
const ABOVE_FOOT = 0.785

const shown = (element: Element): boolean => {
  const { width, height } = element.getBoundingClientRect()
  return width > 1 && height > 1
}

/** Words that are pressed and what only a reader of the screen hears have no place in a picture. */
const isLeftOut = (element: Element): boolean =>
  element.matches('button.word, input, select, textarea, style, svg, .unseen') || !shown(element)

/** Pieces of text side by side, as a template leaves them, are one piece. */
function runsIn(root: Node): readonly (readonly Text[] | Element)[] {
  const runs: (Text[] | Element)[] = []
  for (const node of root.childNodes) {
    const last = runs.at(-1)
    if (node instanceof Element) runs.push(node)
    else if (node instanceof Text && Array.isArray(last)) last.push(node)
    else if (node instanceof Text) runs.push([node])
  }
  return runs
}

function textOf(run: readonly Text[], origin: DOMRect): SVGTextElement | null {
  const words = run
    .map(node => node.textContent ?? '')
    .join('')
    .replaceAll(/\s+/g, ' ')
    .trim()
  const [first] = run
  const holder = first?.parentElement
  if (words === '' || !holder) return null
  const range = document.createRange()
  range.setStartBefore(first)
  range.setEndAfter(run.at(-1) ?? first)
  const box = range.getBoundingClientRect()
  const style = getComputedStyle(holder)
  const right = style.textAlign === 'right' || style.textAlign === 'end'
  const text = document.createElementNS(SVG, 'text')
  text.textContent = words
  text.setAttribute('x', String((right ? box.right : box.left) - origin.left))
  text.setAttribute('y', String(box.top - origin.top + ABOVE_FOOT * box.height))
  text.setAttribute('font-size', style.fontSize)
  text.setAttribute('fill', style.color)
  if (right) text.setAttribute('text-anchor', 'end')
  if (Number(style.fontWeight) > 400) text.setAttribute('font-weight', style.fontWeight)
  return text
}

function ruleUnder(cell: Element, origin: DOMRect): SVGLineElement | null {
  const style = getComputedStyle(cell)
  const width = Number.parseFloat(style.borderBottomWidth)
  if (!(width > 0) || style.borderBottomStyle === 'none') return null
  const box = cell.getBoundingClientRect()
  const line = document.createElementNS(SVG, 'line')
  const y = String(box.bottom - origin.top)
  for (const [name, value] of Object.entries({
    x1: String(box.left - origin.left),
    x2: String(box.right - origin.left),
    y1: y,
    y2: y,
    stroke: style.borderBottomColor,
    'stroke-width': String(width),
  }))
    line.setAttribute(name, value)
  return line
}

/** The text of a table as it stands on the page, and the rules under its cells, to be put round its drawings. */
export function drawnText(root: Element, origin: DOMRect): readonly SVGElement[] {
  if (isLeftOut(root)) return []
  const own = root.matches('th, td') ? [ruleUnder(root, origin)] : []
  const inside = runsIn(root.shadowRoot ?? root).flatMap((run): readonly (SVGElement | null)[] =>
    run instanceof Element ? drawnText(run, origin) : [textOf(run, origin)],
  )
  return [...own, ...inside].filter(found => found !== null)
}
