import { pressureAt } from '@swardsink/model'

export type CurveQuestion = { readonly softness: number }
export type CurveAnswer = readonly { readonly sinkage: number; readonly pressure: number }[]

const deepest = 0.01
const rows = 10

addEventListener('message', (event: MessageEvent<CurveQuestion>) => {
  const { softness } = event.data
  const curve: CurveAnswer = Array.from({ length: rows }, (_, row) => {
    const sinkage = (deepest * (row + 1)) / rows
    return { sinkage, pressure: pressureAt({ kind: 'linear', softness }, sinkage) }
  })
  postMessage(curve)
})
