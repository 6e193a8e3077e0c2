/** Who publishes the page of a source, by its host. */
const byHost: Readonly<Record<string, string>> = {
  'www.usga.org': 'USGA',
  'usga.org': 'USGA',
  'victory.usopen.com': 'USGA',
  'www.randa.org': 'R&A',
  'origin-www.randa.org': 'R&A',
  'randa.org': 'R&A',
  'www.danskgolfunion.dk': 'Danish union',
  'fliphtml5.com': 'R&A and USGA, a scan of the 2023 book',
  'www.swingmakers.fi': 'R&A and USGA, a reprint of the 2023 text',
  'miamivalleygolf.com': 'Miami Valley Golf Association, reprinting USGA and R&A',
  'hazelmeremensclub.org': 'a club, reprinting the text before 2019',
  'mwcseniorgolf.com': 'a club, reprinting the definition of slope',
  'www.njsga.org': 'New Jersey State Golf Association',
  'wdcga.org': 'a golf association of the United States',
  '22070434.hs-sites.com': 'a state golf association',
  'mclga.com': 'a county association, relaying the Scottish union',
  'www.kentgolf.org': 'a county body, relaying the English union',
  'www.somersetladiesgolf.org': 'a county body of England',
  'donabategolfclub.com': 'terms of a club',
  'www.mapperleygolfclub.org': 'terms of a club',
  'www.my-golf.uk': 'commentary on the guidance for Great Britain and Ireland',
  'ongolfhandicaps.com': 'commentary on the guidance for Great Britain and Ireland',
  'forums.golfmonthly.com': 'quotation of the guidance for Great Britain and Ireland',
  'golfrulesguru.com': 'commentary on the Rules of Golf',
  'lindamillergolf.blogspot.com': "an official's notes on the Rules of Golf",
  'viewer.joomag.com': 'the rules page of a national magazine',
  'www.nationalclubgolfer.com': 'a magazine',
  'content.yudu.com': "a regional association's magazine",
  'docslib.org': "instructions of a seniors' association",
}

/** Sources without an address name the text that was read. */
const byText: readonly (readonly [string, string])[] = [
  ['R&A Rules of Handicapping', 'R&A'],
  ['USGA local guidance', 'USGA'],
  ['Rules of Handicapping', 'R&A and USGA'],
  ['international yard', 'international yard and pound agreement'],
  ['common practice', 'common practice'],
]

/** The body behind a source of the file; `null` when none is named here. */
export function publisherOf(source: string): string | null {
  const [address = ''] = source.split(' ')
  if (URL.canParse(address)) return byHost[new URL(address).host] ?? null
  return byText.find(([start]) => source.startsWith(start))?.[1] ?? null
}
