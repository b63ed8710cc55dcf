import { drawnText } from './drawnText.ts'
import { inlineStyles } from './inlineStyles.ts'

const SVG = 'http://www.w3.org/2000/svg'
/** Paper round a figure, px. */
const MARGIN = 12
/** A drawing is the figure by itself if the next one has less of the page than this share of it. */
const MINOR = 0.25

/** Drawings of an entry, whatever tree they stand in; the lines under its settings are none. */
function drawingsIn(root: ParentNode): readonly SVGSVGElement[] {
  return [...root.children].flatMap(element => {
    if (element instanceof SVGSVGElement)
      return element.matches('.figure:not(.height-glyph)') && areaOf(element) > 0 ? [element] : []
    if (element.localName === 'setting-list' || element.localName === 'quantity-setting') return []
    return [...(element.shadowRoot ? drawingsIn(element.shadowRoot) : []), ...drawingsIn(element)]
  })
}

function areaOf(element: Element): number {
  const { width, height } = element.getBoundingClientRect()
  return width * height
}

function unionOf(boxes: readonly DOMRect[]): DOMRect {
  const left = Math.min(...boxes.map(box => box.left))
  const top = Math.min(...boxes.map(box => box.top))
  const right = Math.max(...boxes.map(box => box.right))
  const bottom = Math.max(...boxes.map(box => box.bottom))
  return new DOMRect(left, top, right - left, bottom - top)
}

type Parts = { readonly box: DOMRect; readonly elements: readonly SVGElement[] }

function placed(drawing: SVGSVGElement, box: DOMRect): SVGElement {
  const { left, top } = drawing.getBoundingClientRect()
  const copy = inlineStyles(drawing)
  copy.setAttribute('x', String(left - box.left))
  copy.setAttribute('y', String(top - box.top))
  copy.setAttribute('overflow', 'visible')
  return copy
}

/** One drawing by itself, or several with the table they stand in. */
function partsOf(drawings: readonly SVGSVGElement[]): Parts {
  const [largest, next] = drawings.toSorted((a, b) => areaOf(b) - areaOf(a))
  const alone = largest && (!next || areaOf(next) < MINOR * areaOf(largest))
  if (alone) {
    const box = largest.getBoundingClientRect()
    return { box, elements: [placed(largest, box)] }
  }
  const tables = [...new Set(drawings.map(drawing => drawing.closest('table')))].filter(
    found => found !== null,
  )
  const box = unionOf([...drawings, ...tables].map(element => element.getBoundingClientRect()))
  return {
    box,
    elements: [
      ...tables.flatMap(table => drawnText(table, box)),
      ...drawings.map(drawing => placed(drawing, box)),
    ],
  }
}

export type Picture = { readonly text: string; readonly width: number; readonly height: number }

function pictureOf(
  root: ParentNode,
  q: { readonly title: string; readonly finding: string },
): Picture | null {
  const drawings = drawingsIn(root)
  if (drawings.length === 0) return null
  const { box, elements } = partsOf(drawings)
  const width = Math.ceil(box.width) + 2 * MARGIN
  const height = Math.ceil(box.height) + 2 * MARGIN
  const whole = document.createElementNS(SVG, 'svg')
  const add = (name: string, attributes: Readonly<Record<string, string>>, text = '') => {
    const element = document.createElementNS(SVG, name)
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value)
    element.textContent = text
    whole.append(element)
    return element
  }
  whole.setAttribute('width', String(width))
  whole.setAttribute('height', String(height))
  whole.setAttribute('viewBox', `0 0 ${width} ${height}`)
  whole.setAttribute('role', 'img')
  whole.setAttribute('font-family', 'sans-serif')
  add('title', {}, q.title)
  if (q.finding) add('desc', {}, q.finding)
  const paper = getComputedStyle(document.documentElement).backgroundColor
  add('rect', { width: String(width), height: String(height), fill: paper })
  add('g', { transform: `translate(${MARGIN} ${MARGIN})` }).append(...elements)
  return { text: new XMLSerializer().serializeToString(whole), width, height }
}

/**
 * The figure of an entry as a drawing that stands by itself: no sheet, no page, a family that every machine has.
 * For print it is taken in dark ink on white, whatever paper the reader has chosen; nothing is painted meanwhile.
 */
export function standaloneFigure(
  root: ParentNode,
  q: { readonly title: string; readonly finding: string; readonly forPrint: boolean },
): Picture | null {
  const page = document.documentElement
  const paper = page.getAttribute('data-theme')
  if (!q.forPrint) return pictureOf(root, q)
  try {
    page.setAttribute('data-theme', 'print')
    return pictureOf(root, q)
  } finally {
    if (paper === null) page.removeAttribute('data-theme')
    else page.setAttribute('data-theme', paper)
  }
}
