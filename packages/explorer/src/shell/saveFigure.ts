import { fileName, handOver } from '../controls/index.ts'
import type { Table } from '../entries/view.ts'
import { type Picture, standaloneFigure } from './standaloneFigure.ts'
import { tableText } from './tableText.ts'

/** Twice as fine as the screen: sharp in a document, and on a wall. */
const FINER = 2

export type FigureFormat = 'SVG' | 'PNG' | 'SVG for print'

/** Hands over the figure of an entry as a file; false when it has none. */
export async function saveFigure(
  root: ParentNode,
  q: { readonly format: FigureFormat; readonly title: string; readonly finding: string },
): Promise<boolean> {
  const picture = standaloneFigure(root, { ...q, forPrint: q.format === 'SVG for print' })
  if (!picture) return false
  if (q.format === 'PNG') handOver(await paintedPicture(picture), fileName(q.title, 'png'))
  else handOver(new Blob([picture.text], { type: 'image/svg+xml' }), fileName(q.title, 'svg'))
  return true
}

export function saveTable(table: Table, q: { readonly title: string; readonly locale: string }): void {
  const { title, locale } = q
  handOver(new Blob([tableText(table, locale)], { type: 'text/csv;charset=utf-8' }), fileName(title, 'csv'))
}

async function paintedPicture({ text, width, height }: Picture): Promise<Blob> {
  const image = new Image()
  // As data: a picture by address would count as foreign on a page opened from disk, and the canvas be locked.
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`
  await image.decode()
  const canvas = document.createElement('canvas')
  canvas.width = FINER * width
  canvas.height = FINER * height
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height)
  return new Promise((resolve, reject) => {
    canvas.toBlob(blob => (blob ? resolve(blob) : reject(new Error('no picture'))), 'image/png')
  })
}
