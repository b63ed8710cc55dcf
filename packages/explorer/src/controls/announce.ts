import type { Scenario } from '@swardsink/model'

/** What controls and figures tell the book. Values are SI. */
export type Announcements = {
  /** A quantity was set; `text` is what was typed, kept if it cannot be taken. */
  enter: {
    readonly name: string
    readonly value: number | null
    readonly text: string
    readonly gesture?: string
  }
  choose: { readonly name: string; readonly option: string }
  /** The hand has left the control: the next change is a step of its own. */
  settled: { readonly name: string }
  /** Show me where this is set. */
  find: { readonly name: string }
  /** An entry's own settings, such as what a map shows. */
  rearrange: { readonly id: string; readonly settings: object; readonly gesture?: string }
  /** Do not wait for the finer answer. */
  stop: { readonly id: string }
  /** Other values altogether. */
  replace: { readonly scenario: Scenario; readonly gesture?: string }
}

export type Announcement<Name extends keyof Announcements> = CustomEvent<Announcements[Name]>

/** Bubbles through every shadow tree up to the book. */
export function announce<Name extends keyof Announcements>(
  from: EventTarget,
  name: Name,
  detail: Announcements[Name],
): void {
  from.dispatchEvent(new CustomEvent(`sward-${name}`, { detail, bubbles: true, composed: true }))
}

export function listen<Name extends keyof Announcements>(
  on: EventTarget,
  name: Name,
  hear: (detail: Announcements[Name]) => void,
): void {
  on.addEventListener(`sward-${name}`, event => {
    if (event instanceof CustomEvent) hear(event.detail)
  })
}
