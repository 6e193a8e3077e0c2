import { join, relative } from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesUnder, root, type SourceFile } from './source-files.ts'

/** Inside core each folder imports itself and those before it. */
const coreFolders = ['values', 'log', 'handicap', 'card', 'formats', 'outing', 'season', 'plan', 'review']

const specifier = /(?:^|[^.\w])(?:from|import)\s*\(?\s*['"]([^'"]+)['"]/g

/** What a file imports: a path from the root for our own files, the name for a package. */
function importsOf({ path, text }: SourceFile): string[] {
  return [...text.matchAll(specifier)].map(([, name = '']) => {
    if (name.startsWith('#')) return name.slice(1)
    return name.startsWith('.') ? relative(root, join(root, path, '..', name)) : `package:${name}`
  })
}

/** `path -> import` for every import that the rule does not allow. */
const wrongImports = (
  files: readonly SourceFile[],
  isAllowed: (imported: string, file: SourceFile) => boolean,
): string[] =>
  files.flatMap(file =>
    importsOf(file)
      .filter(imported => !isAllowed(imported, file))
      .map(imported => `${file.path} -> ${imported}`),
  )

const isUnder = (path: string, ...folders: string[]): boolean => folders.some(folder => path.startsWith(`${folder}/`))

describe('who imports whom', () => {
  it('finds the imports it judges', () => {
    const text = `import a from './b.ts'\nimport type { C } from '#core/c.ts'\nexport * from 'zod'\nawait import("x")\n`
    expect(importsOf({ path: 'core/values/a.ts', text })).toEqual([
      'core/values/b.ts',
      'core/c.ts',
      'package:zod',
      'package:x',
    ])
  })

  it('core imports core alone, each folder those before it in the list', () => {
    const files = filesUnder('core')
    expect(files.length).toBeGreaterThan(30)
    expect(
      wrongImports(files, (imported, { path }) => {
        const [here, there] = [path.split('/')[1] ?? '', imported.split('/')[1] ?? '']
        return isUnder(imported, 'core') && coreFolders.indexOf(there) <= coreFolders.indexOf(here)
      }),
    ).toEqual([])
    expect(files.filter(({ path }) => !coreFolders.includes(path.split('/')[1] ?? ''))).toEqual([])
  })

  it('shared imports core, shared and zod/mini', () => {
    const files = filesUnder('shared')
    expect(files.length).toBeGreaterThan(10)
    expect(
      wrongImports(files, imported => isUnder(imported, 'core', 'shared') || imported === 'package:zod/mini'),
    ).toEqual([])
  })

  // Scripts and tests may import everything; nobody imports them.
  it.each([
    ['server', ['core', 'shared', 'server']],
    ['client', ['core', 'shared', 'client']],
  ] as const)('%s imports of our own files only what it may', (folder, allowed) => {
    const files = filesUnder(folder)
    expect(files.length).toBeGreaterThan(1)
    expect(
      wrongImports(
        files,
        imported => imported.startsWith('package:') || !imported.includes('/') || isUnder(imported, ...allowed),
      ),
    ).toEqual([])
  })

  it('what a browser loads takes zod as zod/mini', () => {
    expect(wrongImports([...filesUnder('client'), ...filesUnder('shared')], name => name !== 'package:zod')).toEqual([])
  })
})

describe('core is pure', () => {
  const impure = /\bDate\.now\b|\bnew Date\(\s*\)|\bMath\.random\b|\bperformance\b|\bIntl\b|\btoLocale\w*\(/

  it('reads no clock, no chance and no language of the machine', () => {
    expect(impure.test('const now = Date.now()') && impure.test('new Date()') && impure.test('Math.random()')).toBe(
      true,
    )
    expect(
      filesUnder('core')
        .filter(({ text }) => impure.test(text))
        .map(({ path }) => path),
    ).toEqual([])
  })
})
