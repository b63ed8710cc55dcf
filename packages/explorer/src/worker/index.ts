export { openWorker, type Thread } from './client.ts'
