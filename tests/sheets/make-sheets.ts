import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { chromiumArgs, chromiumPath } from '../browser/kit/chromium.ts'
import { startServer } from '../browser/kit/server.ts'
import { firstTee, newPhone } from './before-the-round.ts'
import { createCamera, type Shot } from './camera.ts'
import { type Look, looks, nameOfLook } from './looks.ts'
import { ownPlan, round, twoScores } from './on-the-course.ts'
import { printSheets } from './paper.ts'
import { desk, finished, manyGroups, phones } from './round-the-outing.ts'
import { unseen } from './screens.ts'
import type { Story } from './stage.ts'

export const stories: Readonly<Record<string, Story>> = {
  newPhone,
  firstTee,
  round,
  ownPlan,
  twoScores,
  finished,
  desk,
  manyGroups,
  phones,
}

export interface Sheets {
  readonly shots: readonly Shot[]
  /** Screens of the client that no sheet shows. */
  readonly missing: readonly string[]
}

/** Plays every story that is asked for and writes its sheets into the folder, which is emptied first. */
export async function makeSheets(
  folder: string,
  isWanted: (look: Look) => boolean,
  asked: readonly string[],
  say: (line: string) => void,
): Promise<Sheets> {
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  const server = await startServer()
  const browser = await chromium.launch({ executablePath: chromiumPath, args: chromiumArgs })
  const camera = createCamera(join(folder, 'shots'), isWanted)
  for (const [name, story] of Object.entries(stories)) {
    if (!asked.includes(name)) continue
    say(`${name} …`)
    await story({ browser, url: server.url, show: camera.show })
    await Promise.all(browser.contexts().map(context => context.close()))
  }
  for (const look of looks.filter(isWanted)) {
    const ofLook = camera.shots.filter(shot => nameOfLook(shot.look) === nameOfLook(look))
    await printSheets(browser, folder, look, ofLook)
  }
  await browser.close()
  await server.stop()
  return { shots: camera.shots, missing: unseen(camera.seen) }
}
