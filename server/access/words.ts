/*
 * 1,024 English words of three to seven letters that are easily said and told apart: chosen from the English list of
 * @scure/bip39 2.4.0 (the list of BIP 39). Left out: what sounds like another word, differs from another by one
 * letter or by vowels alone, is another with an ending, or is unkind to say across a green.
 *
 * The MIT License (MIT)
 *
 * Copyright (c) 2022 Patricio Palladino, Paul Miller (paulmillr.com)
 *
 * Permission is hereby granted, free of charge, to any person obtaining a copy
 * of this software and associated documentation files (the “Software”), to deal
 * in the Software without restriction, including without limitation the rights
 * to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
 * copies of the Software, and to permit persons to whom the Software is
 * furnished to do so, subject to the following conditions:
 *
 * The above copyright notice and this permission notice shall be included in
 * all copies or substantial portions of the Software.
 *
 * THE SOFTWARE IS PROVIDED “AS IS”, WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
 * IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
 * FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
 * AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
 * LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
 * OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN
 * THE SOFTWARE.
 */
const text = `
ability able about above absent absorb absurd account accuse achieve acquire act action actress actual adapt add
address adjust admit adult advance aerobic affair afford afraid age aim airport alarm album alert alien all almost
alone alpha already also alter always amateur amazing among amount amused analyst anchor ancient angle animal annual
another answer antenna antique any apart apology apple approve april arctic arena argue armor around arrange arrest
arrive arrow artist artwork ask aspect asset assist assume athlete atom attend attract august auto autumn average
avocado avoid awake away awesome awful awkward axis badge bag balance balcony bamboo banana banner barely bargain
barrel basic basket battle because become before begin behave behind believe below bench benefit best better between
beyond bicycle bike biology bird blade blanket blast bless blossom blouse blur blush body bonus book borrow bounce
box bracket brain brand brass brave breeze brick bridge brief bright bring bronze broom brother brown bubble budget
buffalo build bulb bundle burger bus buyer cabbage cabin cactus cake calm camera camp can canvas canyon capable
captain carbon card cargo carpet carry cash casino castle casual catalog catch celery cement census century certain
chair chalk change chapter chase chat check cherry chest chicken chief child chimney chuckle chunk churn cigar
circle citizen civil claim clap clarify clean clerk clever click client cliff climb clinic clog close cloth cloud
clown clump cluster clutch coach coconut coffee coil collect column combine come comfort comic common company
concert conduct confirm connect control copper copy coral corn correct cost cotton country couple cousin craft cram
crane crater crawl credit creek cricket crisp critic crop cross crouch crowd crucial crumble crunch crush crystal
cube culture cup curious curve cushion cycle dance daring dawn day debate decade decline define degree delay deliver
demand dentist depend depth deputy desert design desk destroy detail detect develop diagram dial diary diesel diet
differ digital dignity dilemma direct dish dismiss display divert divide divorce doctor dog dolphin domain donate
door dose double dragon drama drastic draw dress drift drill drink drip drive drum duck dune dust duty dwarf dynamic
eager eagle early earth easily east echo ecology economy edge edit educate effort egg elbow elder elegant element
elite embark embody embrace employ empower empty enable enact end endless endorse energy enforce engage engine
enhance enjoy enlist enrich enroll ensure entire entry episode equal equip era erode erosion escape essence estate
eternal ethics evoke evolve example excite exclude execute exhaust exhibit exist exotic expand expect expire explain
expose express extend extra eyebrow fabric face faculty faith false family famous fancy fantasy farm fashion father
fatigue federal feed few field figure file filter final finger finish fiscal fit fitness flag flame flash flavor
flip float floor fluid foam focus follow forest forget fork fortune forum forward fossil foster found fragile fresh
friend fringe frog front frozen fruit fuel funny furnace future gadget gain galaxy gallery game gap garage garden
garlic garment gauge general genius gentle genuine gesture giant gift giggle giraffe give glad glance glare glass
glide glimpse globe glow glue goat goddess good goose gorilla gospel govern gown grace gravity grid grocery guitar
habit hammer hand harbor have hawk head health height hello helmet help hen hidden hill hint hobby hockey honey hope
hotel huge human humble hurdle hurry hybrid ice icon ignore image immune impact inch income index infant inform
inner input insect inside intact into invest invite island ivory jacket jaguar jar jazz jelly jewel job joke judge
juice jump jungle junior kid kite kiwi lab ladder laptop large later laugh lava left leg legend lemon length lesson
level life light limit liquid list little lizard load local lock logic long loop lounge lucky lumber lunch luxury
lyrics magic magnet major mammal manage mango manual maple marble march margin marine market mass math matrix meadow
media melody melt member memory menu merge mesh method middle milk mimic minute mirror mix mobile model modify
moment monkey month moon more motion motor mouse movie much muffin museum music mutual myself napkin nation nature
near neck net never news noble noodle normal north note notice novel now nurse object oblige obtain occur ocean off
office often okay old olive omit onion online only open opera option orbit other outer output oval over owner oxygen
oyster paddle palace panda panel paper parade parent park parrot party patrol peanut pencil people permit person
phrase piano picnic pigeon pilot pink pipe pitch pizza planet play pledge pluck plunge poem point polar pond potato
power prefer pretty price proof proud public pull pulse pupil purity push put puzzle quick quit rack radar ranch
random range rapid rare raven razor reason recall recipe record reduce reform region regret relax rely remain remind
remove render renew reopen repair repeat report resist result retire return review reward rhythm rib rich ride rigid
ripple ritual rival river roast robust rocket rookie rotate rough royal rubber rug runway rural safe salad salmon
salt salute sample scale scheme school scout scrap screen scrub search secret select senior series settle setup
shadow shaft share shell shield shine ship shiver short shrimp silent silly silver since sing sister size skate
sketch skill skin skirt slice slogan small smart smile smooth snack snap sniff soccer social soft solve soup south
space spawn speed sphere spider spike spirit split spoon spot spray spread spring square stable stage stairs stamp
stand stem stock stone stool story street strong stuff submit subway sudden summer sunset super supply surge survey
swarm swift swim sword syrup system tackle talent talk tape target taste taxi teach tell tenant tennis tent term
thing thrive throw thumb ticket tiger tilt timber tiny tired tissue title today token tomato tooth topic topple
torch total toward trade travel treat trend trial tribe trim trophy truck truly trust truth try tunnel turn turtle
twist uncle under undo unfair unfold unique unit unlock until unveil update uphold upper upset urban used useful
vacant vacuum vague valid valley valve vanish vault velvet vendor venue verb verify vessel viable video view violin
visa visit vital vivid volume wagon walnut wasp weasel web wheat width win window winter wire wisdom wonder wool
yellow zebra zero zoo
`

/** The words that can be said to let a phone in, in order of the alphabet. */
export const words: readonly string[] = text.trim().split(/\s+/)
