import { type Kind, settable } from '../../book/index.ts'

export type SettingSettings = {
  /** Names of what can be set here, in order. */
  readonly of: readonly string[]
}

/** A ruled list of things to set. It has nothing to work out: it is where values come from. */
export const setting: Kind<'setting', SettingSettings, null, null> = {
  kind: 'setting',
  read: fields => ({ of: fields.texts('of', []) }),
  problems: ({ of }) =>
    of
      .filter(name => !settable(name))
      .map(name => ({ path: 'of', expected: 'the name of a setting', received: name })),
  sets: ({ of }) => of,
  whenAdded: () => ({ of: ['frontRoller.mass', 'turf.softness'] }),
  needs: () => [],
  input: () => null,
  compute: () => ({ outcome: 'answered', result: null, cautions: [] }),
  section: '§1',
  check: 'test/explorer/book/session.test.ts',
}
