import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { outingRoutes, routes } from '#client/screens/routes.ts'

const textOf = (file: string): string =>
  readFileSync(new URL(`../../../client/screens/${file}`, import.meta.url), 'utf8')

/** The paths of the routes that a file draws, as its source writes them. */
const pathsIn = (text: string): string[] =>
  [...text.matchAll(/<Route path=(?:"([^"]*)"|\{([^}]*)\})/g)].map(([, literal, name]) => literal ?? name ?? '')

const namesOf = (table: string, names: readonly string[]): string[] =>
  names.map(name => (name.includes('-') ? `${table}['${name}']` : `${table}.${name}`)).sort()

test('every page outside an outing has its address from the list, and every address its page', () => {
  const drawn = pathsIn(textOf('App.tsx')).filter(path => path !== '/o/:log/*?')
  expect(drawn.sort()).toEqual(namesOf('routes', Object.keys(routes)))
})

test('so has every page of an outing', () => {
  expect(pathsIn(textOf('outing/OutingScreen.tsx')).sort()).toEqual(namesOf('outingRoutes', Object.keys(outingRoutes)))
})
