declare const brand: unique symbol

/** A string that only counts as what its name says; made by the parsers and makers of its kind. */
export type Brand<Name extends string> = string & { readonly [brand]: Name }

export type LogId = Brand<'LogId'>
export type DeviceId = Brand<'DeviceId'>
/** `device.n`: the identity of an op inside its log. */
export type OpId = Brand<'OpId'>
export type GroupId = Brand<'GroupId'>
export type PlayerId = Brand<'PlayerId'>
export type BallId = Brand<'BallId'>
export type GameId = Brand<'GameId'>
export type TeeId = Brand<'TeeId'>
export type RulingId = Brand<'RulingId'>
export type ShapeId = Brand<'ShapeId'>
export type InviteId = Brand<'InviteId'>

/** Every id: 1 to 32 of small letters, digits and the hyphen, so that it can stand in a key. */
export const idPattern = /^[a-z0-9-]{1,32}$/

export const isId = (text: string): boolean => idPattern.test(text)
