export const text = { title: 'In Worten', unknown: 'nicht bekannt' }
