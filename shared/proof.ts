import type * as z from 'zod/mini'
import type { Json } from '#core/values/json.ts'

/** Any JSON stays as it is: it is readonly already, and recursive. */
type DeepReadonly<T> = [Json] extends [T]
  ? T
  : T extends string | number | boolean
    ? T
    : T extends object
      ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
      : T

type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : false) : false

/**
 * A schema that says exactly what core's type says. Where it does not, the compiler asks for a second argument
 * that nobody can give.
 */
export const proves =
  <T>() =>
  <S extends z.ZodMiniType>(
    schema: S,
    ..._proof: Same<DeepReadonly<z.output<S>>, DeepReadonly<T>> extends true ? [] : [schemaAndTypeDiffer: never]
  ): S =>
    schema
