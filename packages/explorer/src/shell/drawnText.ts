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

function textOf(node: Text, origin: DOMRect): SVGTextElement | null {
  const words = (node.textContent ?? '').replaceAll(/\s+/g, ' ').trim()
  const holder = node.parentElement
  if (words === '' || !holder) return null
  const range = document.createRange()
  range.selectNodeContents(node)
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
  const inside = [...(root.shadowRoot ?? root).childNodes].flatMap((node): readonly (SVGElement | null)[] => {
    if (node instanceof Text) return [textOf(node, origin)]
    return node instanceof Element ? drawnText(node, origin) : []
  })
  return [...own, ...inside].filter(found => found !== null)
}
