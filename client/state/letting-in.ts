import type { GroupId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { browserClock } from '../device/browser-clock.ts'
import { admittedAnswer, allottedAnswer } from '../sync/answers.ts'
import type { AtTheDoor, SpokenWords } from '../sync/at-the-door.ts'
import { inviteFor } from './inviting.ts'
import { currentEngine } from './open-outing.ts'

export const wordsFaults = ['no server', 'not yours', 'busy', 'older server'] as const
export type WordsFault = (typeof wordsFaults)[number]

export const letInFaults = ['no server', 'gone', 'not yours'] as const
export type LetInFault = (typeof letInFaults)[number]

const askAgainMs = 700
/** The invite goes up before its secret does. */
const mostTries = 12

/** Three words to say to a phone that is to be let in: into a group, or null where all are desks. */
export async function sayWords(group: GroupId | null): Promise<Result<SpokenWords, WordsFault>> {
  const answer = allottedAnswer.safeParse(await currentEngine().ask('words', { group }))
  if (!answer.success || answer.data.kind === 'stranger') return err('no server')
  if (answer.data.kind === 'fault') return err('older server')
  if (answer.data.kind === 'no words') return err(answer.data.why)
  const { leftMs, ...said } = answer.data.spoken
  return ok({ ...said, until: browserClock.now() + leftMs })
}

/** Lets somebody in: writes an invite of this phone's own rights, and hands its secret on through the server's memory. */
export async function letIn({ asker, group }: AtTheDoor): Promise<LetInFault | null> {
  const engine = currentEngine()
  const invite = await inviteFor(engine, group === null ? 'desk' : 'scorer', group)
  for (let tries = 0; tries < mostTries; tries++) {
    const why = await admit(engine, { asker, invite })
    if (why !== 'invite unknown') return why
    await new Promise<void>(resolve => browserClock.after(askAgainMs, resolve))
  }
  return 'no server'
}

/** They may ask again. */
export const notNow = ({ asker }: AtTheDoor): Promise<unknown> => admit(currentEngine(), { asker, invite: null })

async function admit(
  engine: ReturnType<typeof currentEngine>,
  message: object,
): Promise<LetInFault | 'invite unknown' | null> {
  const answer = admittedAnswer.safeParse(await engine.ask('admit', message))
  if (!answer.success || answer.data.kind === 'stranger' || answer.data.kind === 'fault') return 'no server'
  return answer.data.kind === 'admitted' ? null : answer.data.why
}
