/**
 * A test that ran: the file from the root, the titles of its groups and its own.
 * @typedef {{ file: string, titles: string[], hasPassed: boolean }} RanTest
 *
 * A test that a row names: the file from the root, titles as they stand in the source.
 * @typedef {{ file: string, titles: string[] }} NamedTest
 *
 * @typedef {{ id: string, symptom: string, kind: string, by: string, tests: NamedTest[] }} FailureRow
 */

/** What can hold a row; `tests/README.md` says what each means. */
export const rowKinds = ['test', 'ruled out', 'by hand', 'desk', 'PostgreSQL']

/** A cell may hold a bar as `\|`, as every table of Markdown does. */
const betweenCells = /(?<!\\)\|/

/**
 * The rows of the table of failure modes; other tables of the page are passed over.
 * @param {string} page
 * @returns {FailureRow[]}
 */
export function parseFailureRows(page) {
  return page.split('\n').flatMap(line => {
    if (!/^\| [A-Z]+-\d\d /.test(line)) return []
    const [, id = '', symptom = '', kind = '', by = ''] = line.split(betweenCells).map(cell => cell.trim())
    return [{ id, symptom, kind, by, tests: namedIn(by) }]
  })
}

/** @param {string} cell */
function namedIn(cell) {
  return [...cell.matchAll(/`([^`]+ › [^`]+)`/g)].map(([, name = '']) => {
    const [file = '', ...titles] = name.split(' › ')
    return { file: `tests/${file}`, titles }
  })
}

/**
 * What a run lacks of the tests that the rows name, a line each: every one must have run, in all its cases, and passed.
 * @param {readonly FailureRow[]} rows
 * @param {readonly RanTest[]} ran
 */
export function missingTests(rows, ran) {
  return rows.flatMap(({ id, tests }) =>
    tests.flatMap(test => {
      const found = ran.filter(one => isNamed(test, one))
      const name = [test.file, ...test.titles].join(' › ')
      if (found.length === 0) return [`${id}: did not run: ${name}`]
      return found.every(({ hasPassed }) => hasPassed) ? [] : [`${id}: did not pass: ${name}`]
    }),
  )
}

/**
 * @param {NamedTest} test
 * @param {RanTest} ran
 */
function isNamed({ file, titles }, ran) {
  // What several files run is named where it is written.
  if (/\.(test|spec)\.tsx?$/.test(file) && file !== ran.file) return false
  return titles.length === ran.titles.length && titles.every((title, place) => fits(title, ran.titles[place] ?? ''))
}

/**
 * A title of many cases has places that each case fills: `%s`, `$name`, `${name}`.
 * @param {string} title
 * @param {string} filled
 */
function fits(title, filled) {
  const parts = title.split(/%[sdifjoO#]|\$\{[^}]*\}|\$[A-Za-z][\w.]*/)
  const pattern = parts.map(part => part.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)).join('.*')
  return new RegExp(`^${pattern}$`, 's').test(filled)
}
