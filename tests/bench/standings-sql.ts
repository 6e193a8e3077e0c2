import type { Op } from '#core/log/op.ts'
import { opIdOf } from '#core/log/op.ts'
import { parseKey } from '#core/outing/keys.ts'
import { loadDriver } from '#server/store/driver.ts'
import type { Row } from './standings-run.ts'

/**
 * The yardstick: the facts of the log as rows of an in-memory SQLite, and one query that says which of them are current,
 * lays the strokes, counts the points, and ranks by countback. One ball is one player; handicaps are as they are typed.
 */
const schema = `
  create table fact (op text, key text, kind text, ball text, hole integer, owner text, number, par integer,
    primary key (op, key)) without rowid;
  create index by_kind on fact (kind, ball, hole);
  create table replaced (op text, key text, primary key (op, key)) without rowid;`

const query = `
  with current as materialized (
    select * from fact where not exists (select 1 from replaced where replaced.op = fact.op and replaced.key = fact.key)),
  course as (select hole, par, row_number() over (order by number, hole) as place from current where kind = 'hole'),
  field as (
    select place.ball, place.owner, cast(round(handicap.number * 0.95 + 1e-9) as integer) as strokes
    from current place join current handicap on handicap.kind = 'handicap' and handicap.ball = place.ball
    where place.kind = 'place'),
  written as (
    select score.ball, score.hole, min(score.number) as score, count(distinct score.number) as ways, field.strokes
    from current score join field on field.ball = score.ball
    where score.kind = 'score' and (score.owner is null or score.owner = field.owner)
    group by score.ball, score.hole),
  points as (
    select ball, hole, case when ways > 1 then null when score = 'picked-up' then 0 else
      max(0, par + 2 + strokes / 18 + (place <= strokes % 18) - score) end as points
    from written join course using (hole)),
  sums as (
    select ball, count(*) as through, sum(points) as total,
      sum(points) filter (where hole > 9) as last9, sum(points) filter (where hole > 12) as last6,
      sum(points) filter (where hole > 15) as last3, sum(points) filter (where hole = 18) as last1,
      sum(points) filter (where hole between 4 and 9) as front6, sum(points) filter (where hole between 7 and 9) as front3,
      sum(points) filter (where hole = 9) as front1
    from points group by ball)
  select ball, total, through, rank() over (order by total desc, last9 desc, last6 desc, last3 desc, last1 desc,
    front6 desc, front3 desc, front1 desc) as place
  from sums order by place, ball`

export interface Yardstick {
  readonly rows: () => Row[]
}

export async function loadYardstick(ops: readonly Op[]): Promise<Yardstick> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(':memory:')
  database.exec(schema)
  const insert = database.prepare('insert into fact values (?, ?, ?, ?, ?, ?, ?, ?)')
  const replace = database.prepare('insert or ignore into replaced values (?, ?)')
  database.exec('begin')
  for (const op of ops) {
    for (const { key, value, replaces } of op.facts) {
      const parts = parseKey(key)
      if (parts === null) continue
      const { number, par, owner } = columnsOf(value)
      insert.run(opIdOf(op), key, parts.kind, parts.ball ?? parts.player, parts.hole, parts.group ?? owner, number, par)
      for (const replaced of replaces) replace.run(replaced, key)
    }
  }
  database.exec('commit')
  const statement = database.prepare(query)
  return { rows: () => statement.all() as unknown as Row[] }
}

function columnsOf(value: unknown): { number: number | string | null; par: number | null; owner: string | null } {
  if (typeof value === 'number' || typeof value === 'string') return { number: value, par: null, owner: null }
  const fields = value as { strokes?: number; index?: number; par?: number; group?: string } | null
  return { number: fields?.strokes ?? fields?.index ?? null, par: fields?.par ?? null, owner: fields?.group ?? null }
}
