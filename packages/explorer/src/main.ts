import { FirstLaw } from './first-law.ts'

customElements.define('first-law', FirstLaw)
