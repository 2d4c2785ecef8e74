import type { HeatAction } from '$lib/outing/heat.ts';
import type { ReasonKind } from '$lib/screening/types.ts';

/** One thing to know, and what it rests on. */
export interface SafetyLine {
	readonly text: string;
	readonly basis: string;
}

export interface SafetySheet {
	readonly title: string;
	readonly lead: string;
	readonly parts: readonly { readonly title: string; readonly lines: readonly SafetyLine[] }[];
}

const COMMON = 'common practice, no source';
const line = (text: string, basis = COMMON): SafetyLine => ({ text, basis });

const weather: SafetySheet = {
	title: 'Weather and air',
	lead: 'Heat, cold and bad air make the same pace harder. Go by talk, and ease off early.',
	parts: [
		{
			title: 'In the heat',
			lines: [
				line(
					'It takes 10 to 14 days to get used to heat. Before that, less is enough.',
					'ACSM 2021'
				),
				line(
					'Older, unfit, pregnant or lately ill people are at more risk, and so are people who take some medicines.',
					'US public health lists'
				),
				line(
					'In heat the pulse is higher at the same pace. Slow down; do not raise the band.',
					'Adams 2014'
				),
				line(
					'Full sun can add up to 8 °C (15 °F) to the heat index.',
					'US National Weather Service'
				),
				line(
					'Drink when you are thirsty, and no more than that. Too much water is dangerous too.',
					'EAH consensus 2015'
				),
				line(
					'Feeling sick, dizzy or weak: stop, shade, loosen clothes, cool cloths, sip water. Vomiting, getting worse, or no better in an hour: medical help.',
					'US public health lists'
				),
				line(
					'Very hot and confused, staggering or collapsed: call for help, and cool the whole body at once. It can happen on cool days too.',
					'ACSM 2021'
				)
			]
		},
		{
			title: 'In the cold',
			lines: [
				line('Wear layers, and warm up for longer.'),
				line(
					'Cold air can make asthma and heart trouble worse. A scarf over the mouth helps; indoors is better.',
					'AHA on cold weather; a review of 2018 on cold and the heart. The scarf: AAFA, quoted.'
				),
				line('On ice, go indoors or call it off.')
			]
		},
		{
			title: 'Thunder',
			lines: [
				line(
					'If you hear thunder, go inside a building or a car. Wait 30 minutes after the last one.',
					'US National Weather Service'
				)
			]
		},
		{
			title: 'Bad air (air quality index, AQI)',
			lines: [
				line(
					'101 to 150: people with heart or lung trouble, and older people, go shorter and easier.',
					'US EPA air quality guide'
				),
				line(
					'151 to 200: they stay in. Everybody else goes shorter and easier.',
					'US EPA air quality guide'
				),
				line('Over 200: no outing outdoors.', 'US EPA air quality guide'),
				line('With asthma, keep your reliever at hand.', 'US EPA air quality guide')
			]
		},
		{
			title: 'Dark and traffic',
			lines: [line('Bright clothes, a light, the pavement, and no music that hides a car.')]
		}
	]
};

const outing: SafetySheet = {
	title: 'Treadmill, afterwards, pain',
	lead: 'The commonest harm is a fall from a belt, or a sore shin or knee.',
	parts: [
		{
			title: 'On a treadmill',
			lines: [
				line('Read the controls first, and find the stop button.'),
				line(
					'Clip the safety cord to your clothes, and test it once.',
					'US consumer safety advice'
				),
				line(
					'Stand with a foot on each side rail. Start the belt at its slowest, then step on, holding the rail.',
					'US consumer safety advice'
				),
				line('Begin with a slow walk, and change speed in small steps.'),
				line(
					'Look ahead. Let go of the rail when you are steady: holding on makes speed and pulse not match.'
				),
				line('Never step off a moving belt. Slow down, stop, then get off.'),
				line('Keep two metres free behind it, one metre wide.', 'EN 957-6:2010'),
				line('Keep children and pets away. Take the key out afterwards.', 'ISO 20957-6:2021'),
				line(
					'Of the emergency visits for home exercise machines in the US, two in three were treadmills.',
					'Graves 2014'
				)
			]
		},
		{
			title: 'After an outing',
			lines: [
				line(
					'Walk for six minutes or more. Do not stop dead: it can make you light-headed.',
					'UHN, Toronto: five minutes or more. Six is our own.'
				),
				line(
					'Chest, breath, fainting or heart signs in the next hours count as they do during it. The risk stays raised for up to an hour.',
					'AHA 2020'
				),
				line('Wait some minutes before a hot shower or a sauna.'),
				line(
					'Dark urine, like tea or cola, with strong muscle pain or weakness: urgent care. It can come days later.',
					'US CDC, NIOSH'
				)
			]
		},
		{
			title: 'Pain',
			lines: [
				line(
					'New, sharp or growing pain in a joint, bone or muscle, or a limp: no running until it is gone.'
				),
				line(
					'Walk home if it does not hurt. Not better in a few days: a physiotherapist or a doctor.'
				),
				line('Cannot put weight on it, or newly swollen: a doctor.'),
				line('Numb or weak legs, or new trouble with bladder or bowels: a doctor today.'),
				line(
					'Muscles that are stiff for a day or two after something new are normal. Walk gently.'
				),
				line(
					'In one study, one in nine beginners was hurt within six weeks: begin slowly, and rest a day between.',
					'Kluitenberg 2015'
				)
			]
		}
	]
};

const health: SafetySheet = {
	title: 'Medicines, pregnancy, doctors',
	lead: 'Never change or skip a medicine because of this app. Ask the person who prescribed it.',
	parts: [
		{
			title: 'Medicines that change the pulse',
			lines: [
				line(
					'With beta blockers the pulse stays lower. Their names often end in -olol, and some are eye drops. Diltiazem, verapamil, ivabradine, digoxin, clonidine and rhythm medicines count too. Pulse numbers would be wrong, so we show none.',
					'Keteyian 2023, Diaz-Buschmann 2014. Eye drops: US Pharmacist 2016. The other names: quoted.'
				),
				line(
					'Some medicines make the pulse go up. Among them are stimulants for ADHD and too much of a thyroid tablet. Some cold medicines and many puffs of an asthma reliever do it too.',
					'Thyroid: the UK leaflet of 2021. Relievers: NAC Australia. The others: quoted.'
				),
				line('With any of these go by talk and effort.', 'ACSM guidelines')
			]
		},
		{
			title: 'Medicines and heat',
			lines: [
				line(
					'Take more care on hot days with water tablets, beta blockers and other blood pressure tablets. Some tablets for allergy, mood or sleep count too, and so do stimulants.',
					'US public health lists'
				)
			]
		},
		{
			title: 'Medicines and sugar',
			lines: [
				line(
					'Insulin, or tablets that can make your sugar drop: check it, and carry something sweet.',
					'ACSM 2022'
				),
				line(
					'Shaky or sweaty: stop, and take fast sugar if you can swallow. Not better in 15 minutes, or drowsy: call for help.',
					'ACSM 2022. The minutes: ADA, quoted.'
				)
			]
		},
		{
			title: 'Pregnant, or a baby in the past year',
			lines: [
				line('Ask your doctor or midwife first. Most people may be active.', 'ACOG 2020'),
				line('Go by talk and effort, not by pulse.', 'ACOG 2020'),
				line(
					'Chest pain, a racing heart, trouble breathing, fainting, a fit, heavy bleeding or a very bad headache: stop, and call for help now. This holds for a year after the birth too.',
					'US list of warning signs for mothers (Texas DSHS). To call for these is our own caution.'
				),
				line(
					'Stop, and call your maternity unit or doctor, if you bleed, lose fluid or get regular painful tightening. Do the same with headache, dizzy spells, weak muscles, or a sore or swollen calf. Call too if you are breathless before you begin, or the baby moves less.',
					'ACOG 2020, quoted'
				),
				line(
					'Call the same day with changes in your sight, a swollen face or hands, strong belly pain, or a fever.',
					'US list of warning signs for mothers (Texas DSHS)'
				),
				line(
					'After a birth, begin with light activity and build up slowly.',
					'Canadian guideline 2025'
				)
			]
		},
		{
			title: 'See a doctor before the next outing',
			lines: [
				line(
					'Chest pain or pressure, fainting or dizzy spells. A heart that races or skips. Breath that runs out too easily. Swollen ankles. Pain in the leg that comes with walking and goes with rest.',
					'ACSM guidelines, signs and symptoms'
				),
				line('Heart or breathing trouble since an illness.', 'ACC 2022'),
				line(
					'A resting pulse under 40 or over 100 on two mornings.',
					'60 to 100 is usual: Yale Medicine 2026. Under 40, and two mornings: our own choice.'
				),
				line('A fever, or an illness below the neck: wait until it is gone.', 'Dick and Diehl 2014')
			]
		}
	]
};

export const safetySheets = {
	title: 'More to know, to read or to print',
	sheets: { weather, outing, health } satisfies Record<string, SafetySheet>,
	basis: (text: string) => `(${text})`,
	number: (number: string) => `Emergency number: ${number}`,
	noNumber: 'Emergency number: choose it before you set out.',
	localRules: 'Local rules, licensed practice and what your own doctor told you come first.',
	back: 'Signs to stop',
	heat: {
		title: 'How hot is too hot?',
		caption: 'What heat asks for. The stricter of the two wins',
		columns: { action: 'What to do', wetBulb: 'Wet-bulb globe', index: 'Heat index' },
		from: (celsius: string) => `from ${celsius} °C`,
		basis:
			'Wet-bulb globe temperature: limits for people who are not used to heat (ACSM 2007). Heat index: classes of the US National Weather Service; what to do at each is our own choice, no source.',
		actions: {
			usual: 'The outing as usual.',
			ease: 'Shorter, in the shade, with more breaks.',
			'walk-only': 'Walk only, as much rest as walking, short, in the shade.',
			cancel: 'Call it off.'
		} satisfies Record<HeatAction, string>,
		askTitle: 'Look it up for today',
		wetBulb: 'Wet-bulb globe temperature (°C)',
		index: 'Heat index, or “feels like” (°C)',
		hint: 'Fill in what you know. One is enough.',
		warned: 'There is a public heat warning today',
		ask: 'What does it mean today?',
		today: 'Today',
		issues: {
			missing: 'Fill in one of them, or tick the warning.',
			'not-a-number': 'Type a number of degrees, such as 24, or leave it empty.',
			'too-low': 'That is colder than it gets. Is it in °C?',
			'too-high': 'That is hotter than it gets. Is it in °C? 90 °F is 32 °C.'
		} as Record<string, string>
	},
	advise: {
		title: 'Who may advise what',
		caption: 'Whose advice lifts which kind of reason here',
		columns: { kind: 'Reason', who: 'Who may advise' },
		kinds: {
			symptom: 'A sign of illness',
			condition: 'A long-term health problem',
			injury: 'A sore or injured part',
			pregnancy: 'Pregnancy, or a baby in the past year',
			age: 'Age, and new to hard effort',
			medicine: 'A medicine',
			wait: 'Ill today'
		} satisfies Record<ReasonKind, string>,
		nobody: 'Nobody: it ends when you are well again',
		limit: (who: string) => `A limit in beats a minute may come from ${who}.`,
		coach:
			'A coach may ask how you are, lower the effort, send you home and call for help. A coach may not say what is wrong with you, advise on medicines, or lift a result.',
		basis: 'This is our own rule, common practice, no source. Local law decides who may do what.'
	}
};
