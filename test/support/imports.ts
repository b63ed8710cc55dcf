import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { parseSync, Visitor } from 'vite'
import { repository } from './files.ts'

export type Import = {
  /** From the top of the repository. */
  readonly from: string
  /** A path from the top of the repository, or the name of a package. */
  readonly to: string
}

/** What a module asks for, in every way there is: import, export from, import(), a type's import(), new URL(). */
export function importsOf(
  from: string,
  code = readFileSync(join(repository, from), 'utf8'),
): readonly Import[] {
  const { program, module, errors } = parseSync(from, code)
  if (errors.length > 0) throw new Error(`${from}: ${errors.map(error => error.message).join('; ')}`)
  const asked = [
    ...module.staticImports.map(found => found.moduleRequest.value),
    ...module.staticExports
      .flatMap(found => found.entries)
      .flatMap(entry => entry.moduleRequest?.value ?? []),
  ]
  const ask = (node: { type: string }) => {
    asked.push(
      'value' in node && typeof node.value === 'string' ? node.value : `a computed address in ${from}`,
    )
  }
  new Visitor({
    ImportExpression: node => ask(node.source),
    TSImportType: node => ask(node.source),
    NewExpression: node => {
      const [address, base] = node.arguments
      const isURL = node.callee.type === 'Identifier' && node.callee.name === 'URL'
      if (isURL && address && base?.type === 'MemberExpression' && base.object.type === 'MetaProperty')
        ask(address)
    },
  }).visit(program)
  return [...new Set(asked)].map(to => ({ from, to: to.startsWith('.') ? join(dirname(from), to) : to }))
}
