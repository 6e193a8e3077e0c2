import * as z from 'zod/mini'
import { type DeviceId, type GroupId, type InviteId, idPattern, type LogId, type OpId } from '#core/values/ids.ts'
import { limits } from './limits.ts'

/** An id of one kind: the brand exists for the compiler alone. */
export const idOf = <B extends string>() => z.string().check(z.regex(idPattern)) as unknown as z.ZodMiniType<B, B>

export const logId = idOf<LogId>()
export const deviceId = idOf<DeviceId>()
export const groupId = idOf<GroupId>()
export const inviteId = idOf<InviteId>()

export const opIdSchema = z
  .string()
  .check(z.maxLength(48), z.regex(/^[a-z0-9-]{1,32}\.[1-9]\d{0,9}$/)) as unknown as z.ZodMiniType<OpId, OpId>

/** Control, direction and invisible marks; the joiners of some scripts are among them. */
const marks = String.raw`\u0000-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb`

/** One of them. */
export const unreadable = new RegExp(`[${marks}]`)

/** None of them can stand in a text that people read; no space around it. */
const readable = new RegExp(`^(?! )[^${marks}]+(?<! )$`)

export const textUpTo = (length: number) => z.string().check(z.maxLength(length), z.regex(readable))

export const personName = textUpTo(limits.nameLength)

export const wholeFrom = (smallest: number, largest: number) => z.int().check(z.gte(smallest), z.lte(largest))

/** SHA-256 in hex: what a server keeps of a secret. */
export const hashText = z.string().check(z.regex(/^[0-9a-f]{64}$/))

/** 128 bits or more in base64url: what only the phone keeps. */
export const secretText = z.string().check(z.regex(/^[A-Za-z0-9_-]{22,64}$/))

export const eraText = z.string().check(z.regex(/^[a-z0-9]{8,32}$/))

export const sequence = wholeFrom(0, Number.MAX_SAFE_INTEGER)

/** Milliseconds since 1970. */
export const timeMs = wholeFrom(0, 8_640_000_000_000_000)

/** A range of n, closed. */
export const ranges = z
  .array(z.tuple([wholeFrom(1, 4_294_967_295), wholeFrom(1, 4_294_967_295)]))
  .check(z.maxLength(limits.rangesInDevice))

export const hereSchema = z.array(z.tuple([deviceId, ranges])).check(z.maxLength(limits.devicesInExchange))
