import type { Plugin } from 'vite'

/** What the built page may load and run; a source list a directive, most of them empty on purpose. */
export type ContentPolicy = Readonly<Record<string, readonly string[]>>

/** The page served from a folder: its own files and nothing else, no inline script or style, no evaluation. */
export const servedPolicy: ContentPolicy = {
  'default-src': ["'none'"],
  'script-src': ["'self'"],
  'worker-src': ["'self'"],
  'style-src': ["'self'"],
  // Pictures drawn here leave as data or blob addresses when they are saved.
  'img-src': ["'self'", 'data:', 'blob:'],
  'manifest-src': ["'self'"],
  'base-uri': ["'none'"],
  'form-action': ["'none'"],
}

export function policyText(policy: ContentPolicy): string {
  return Object.entries(policy)
    .map(([directive, sources]) => `${directive} ${sources.join(' ')}`)
    .join('; ')
}

/** Writes the policy into the built page. The live server is left alone: it injects a script of its own. */
export function contentPolicy(policy: ContentPolicy): Plugin {
  return {
    name: 'swardsink-content-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: policyText(policy) },
        injectTo: 'head-prepend',
      },
    ],
  }
}
