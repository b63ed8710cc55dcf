import { html } from 'lit'
import { settingNames } from '../settingNames.ts'
import type { View } from '../view.ts'
import { settingFinding, subjectOf } from './finding.ts'
import type { SettingSettings } from './kind.ts'
import '../../controls/index.ts'

/** A ruled list of settings, with one sentence on what they come to. */
export const settingView: View<'setting', SettingSettings, null> = {
  kind: 'setting',
  title: ({ settings, reader }) => reader.words.setting.titles[subjectOf(settings.of)] ?? '',
  finding: ({ settings, scenario, reader }) => settingFinding(settings.of, { scenario, reader }),
  note: () => null,
  draw: ({ settings, now, held, reader }) =>
    html`<setting-list .names=${settings.of} .scenario=${now} .held=${held} .reader=${reader}></setting-list>`,
  edit: editing => settingNames(editing, { of: editing.settings.of, as: 'of' }),
}
