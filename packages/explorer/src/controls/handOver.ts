/** Some browsers fetch what is handed over a while after it was. */
const UNTIL_FETCHED = 10_000

/** Hands the reader something as a file. */
export function handOver(content: Blob, name: string): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), UNTIL_FETCHED)
}

/** A title as the name of a file: letters and digits of any alphabet. */
export function fileName(title: string, ending: string): string {
  const plain = title
    .toLowerCase()
    .replaceAll(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
  return `${plain || 'swardsink'}.${ending}`
}
