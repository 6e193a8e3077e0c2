/** Every page outside an outing, by the address behind the `#`. What is in neither list leads nowhere. */
export const routes = {
  home: '/',
  start: '/start',
  bag: '/bag',
  join: '/join/*?',
  own: '/own/*?',
} as const

/** Every page of an outing. */
export const outingRoutes = {
  hole: '/o/:log/hole/:hole?/:lap?',
  reset: '/o/:log/reset/:three',
  board: '/o/:log/board',
  card: '/o/:log/card',
  share: '/o/:log/share',
  finish: '/o/:log/finish',
  games: '/o/:log/games',
  groups: '/o/:log/groups',
  mend: '/o/:log/mend',
  rulings: '/o/:log/rulings',
  sketch: '/o/:log/sketch/:hole',
  targets: '/o/:log/targets',
  plan: '/o/:log/plan/:hole/:lap',
  'bag-from': '/o/:log/bag/:hole/:lap',
} as const
