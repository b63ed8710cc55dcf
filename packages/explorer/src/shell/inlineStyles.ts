/** What a drawing takes from style sheets and may carry as attributes, where no sheet goes with it. */
const CARRIED = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-opacity',
  'opacity',
  'paint-order',
  'font-size',
  'font-style',
  'font-weight',
  'text-anchor',
  'dominant-baseline',
  'visibility',
  'display',
] as const

/** These do not come down from the element around. */
const OWN: readonly string[] = ['opacity', 'dominant-baseline', 'display']

const INITIAL: Readonly<Record<string, string>> = {
  opacity: '1',
  'dominant-baseline': 'auto',
  display: 'inline',
}

/** Whatever machine a figure is opened on has a family of this name. */
const GENERIC_FAMILY = 'sans-serif'

/** Means something on the page only. */
const LEFT_BEHIND = /^(class|tabindex|role|style|data-.*|aria-.*|part)$/

function strip(element: Element): void {
  for (const { name } of [...element.attributes]) if (LEFT_BEHIND.test(name)) element.removeAttribute(name)
  for (const node of [...element.childNodes]) if (node.nodeType === Node.COMMENT_NODE) node.remove()
}

function carry(original: Element, copy: Element, around: CSSStyleDeclaration | null): void {
  const style = getComputedStyle(original)
  for (const name of CARRIED) {
    const value = style.getPropertyValue(name)
    const expected = OWN.includes(name) ? INITIAL[name] : around?.getPropertyValue(name)
    if (value !== '' && value !== expected && !(name === 'display' && value !== 'none'))
      copy.setAttribute(name, value)
    else if (copy.hasAttribute(name) && name !== 'font-size') copy.removeAttribute(name)
  }
  strip(copy)
  const inside = copy.children
  for (const [at, child] of [...original.children].entries()) {
    const beside = inside[at]
    if (beside) carry(child, beside, style)
  }
}

/** A copy of a drawing that carries its looks itself and needs no sheet, at the size it has on the page. */
export function inlineStyles(original: SVGSVGElement): SVGSVGElement {
  const copy = original.cloneNode(true) as SVGSVGElement
  carry(original, copy, null)
  const { width, height } = original.getBoundingClientRect()
  copy.setAttribute('width', String(width))
  copy.setAttribute('height', String(height))
  copy.setAttribute('font-family', GENERIC_FAMILY)
  return copy
}
