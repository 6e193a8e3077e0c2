import { describe, expect, test } from 'vitest'
import { outingRoutes, routes } from '#client/screens/routes.ts'
import { allRows, routeOf, screenStates } from './screen-states.ts'

describe('the list of screens and their states', () => {
  test('has every page that has an address, each with a state at least', () => {
    for (const screen of Object.keys({ ...routes, ...outingRoutes })) {
      expect(screenStates[screen as keyof typeof screenStates]?.length ?? 0, screen).toBeGreaterThan(0)
    }
  })

  test('names no state twice', () => {
    const rows = allRows((screen, state) => `${screen}: ${state}`)
    expect(new Set(rows).size).toBe(rows.length)
  })

  test('knows a screen by its address', () => {
    expect('/o/day/hole/4/2').toMatch(routeOf('hole'))
    expect('/o/day/hole').toMatch(routeOf('hole'))
    expect('/o/day/board').not.toMatch(routeOf('hole'))
    expect('/join').toMatch(routeOf('join'))
    expect('/').toMatch(routeOf('home'))
    expect('/start').not.toMatch(routeOf('home'))
    expect('/').not.toMatch(routeOf('every page of an outing'))
  })
})
