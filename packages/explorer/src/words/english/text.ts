export const text = { title: 'In words', unknown: 'not known' }
