/**
 * How a source was known to whoever wrote the rules down.
 * seen: the point stands in a copy of the source that was read, mostly its abstract or an extract.
 * secondary: read in other publications that quote it.
 * memory: known by heart; to be looked up before it is relied on.
 */
export type Seen = 'seen' | 'secondary' | 'memory';

export interface Source {
	readonly authors: string;
	/** Null where the source does not show one. */
	readonly year: number | null;
	/** Null where the exact title was not seen. */
	readonly title: string | null;
	/** Journal, volume and pages, or publisher. */
	readonly where: string;
	readonly doi: string | null;
	readonly seen: Seen;
	readonly note: string | null;
}

function source(
	seen: Seen,
	authors: string,
	year: number | null,
	title: string | null,
	where: string,
	doi: string | null = null,
	note: string | null = null
): Source {
	return { authors, year, title, where, doi, seen, note };
}

/** Everything that a question or a rule rests on. Topics only: every wording is our own. */
export const sources = {
	// Who should ask first
	riebe2015: source(
		'secondary',
		'Riebe D, Franklin BA, Thompson PD, Garber CE, Whitfield GP, Magal M, Pescatello LS',
		2015,
		"Updating ACSM's recommendations for exercise preparticipation health screening",
		'Med Sci Sports Exerc 47(11):2473-2479',
		'10.1249/MSS.0000000000000664',
		'abstract seen; the leaves of the decision figure read in pages that restate it'
	),
	franklin2020: source(
		'secondary',
		'Franklin BA, Thompson PD, Al-Zaiti SS, and others, for the American Heart Association',
		2020,
		null,
		'Circulation 141:e705-e736',
		null,
		'restates the logic of riebe2015; read in a summary'
	),
	acsmGuidelines: source(
		'seen',
		'American College of Sports Medicine',
		2018,
		"ACSM's guidelines for exercise testing and prescription, 10th edition, chapter 2",
		'Wolters Kluwer',
		null,
		'extract seen; the nine signs stand in its table of signs and symptoms'
	),
	warburton2011: source(
		'secondary',
		'Warburton DER, Gledhill N, Jamnik VK, Bredin SSD, McKenzie DC, Stone J, Charlesworth S, Shephard RJ',
		2011,
		'Evidence-based risk assessment and recommendations for physical activity clearance: Consensus Document 2011',
		'Appl Physiol Nutr Metab 36(S1):S266-S298',
		'10.1139/h11-062',
		'abstract seen; the topics of the public form that came of it, not its wording'
	),
	bredin2013: source(
		'seen',
		'Bredin SSD, Gledhill N, Jamnik VK, Warburton DER',
		2013,
		null,
		'Can Fam Physician 59(3):273-277',
		null,
		'the older form asked people over 69 who are not used to effort to see a doctor; the newer one dropped that'
	),
	burr2012: source(
		'seen',
		'Burr JF, Shephard RJ, Zehr EP',
		2012,
		'Physical activity after stroke and spinal cord injury',
		'Can Fam Physician 58(11):1236-1239'
	),
	csep: source(
		'seen',
		'Canadian Society for Exercise Physiology',
		null,
		null,
		'pages on questions before activity',
		null,
		'topics: told to avoid or modify exercise, concussion, 160/90, "if not sure, tick yes"'
	),
	apss2019: source(
		'seen',
		'Exercise and Sports Science Australia, AUSactive, Sports Medicine Australia',
		2019,
		'Adult pre-exercise screening system',
		'pages of the three bodies',
		null,
		'topics of its first stage: asthma attack in 12 months, trouble controlling blood sugar'
	),
	pssYp2021: source(
		'seen',
		'Exercise and Sports Science Australia, AUSactive, Sports Medicine Australia',
		2021,
		'Pre-exercise screening system for young people',
		'pages of the three bodies',
		null,
		'questions made for adults do not assess young people well enough'
	),
	gdpr: source(
		'seen',
		'European Union',
		2016,
		'General Data Protection Regulation, article 8',
		'Regulation (EU) 2016/679'
	),
	usGuidelines2018: source(
		'seen',
		'US Department of Health and Human Services',
		2018,
		'Physical activity guidelines for Americans, 2nd edition',
		'US Department of Health and Human Services',
		null,
		'start low and go slow'
	),

	// Signs that need help
	ahaSigns: source(
		'seen',
		'American Heart Association',
		null,
		'Warning signs of a heart attack',
		'public page'
	),
	nhs999: source(
		'seen',
		'National Health Service and ambulance trusts, United Kingdom',
		null,
		'When to call 999',
		'public pages'
	),

	// Illness
	gluckman2022: source(
		'seen',
		'Gluckman TJ, Bhave NM, Allen LA, and others, for the American College of Cardiology',
		2022,
		'2022 ACC expert consensus decision pathway on cardiovascular sequelae of COVID-19 in adults',
		'J Am Coll Cardiol 79(17):1717-1756',
		null,
		'heart or lung signs after the infection, not the infection, decide on checks; pages from memory'
	),
	dick2014: source(
		'seen',
		'Dick NA, Diehl JJ',
		2014,
		'Febrile illness in the athlete',
		'Sports Health 6(3):225-231'
	),

	// Medicine, and pulse that cannot be trusted
	keteyian2023: source(
		'seen',
		'Keteyian SJ, and others',
		2023,
		null,
		'J Cardiopulm Rehabil Prev',
		null,
		'on beta blockers, targets from a predicted maximum fell in the guideline range in 0 to 61 % of cardiac patients'
	),
	diazBuschmann2014: source(
		'seen',
		'Diaz-Buschmann I, and others',
		2014,
		null,
		'Eur J Prev Cardiol 21(12):1474-1480',
		null,
		'on beta blockers, the choice of method changes the target'
	),
	colberg2016: source(
		'memory',
		'Colberg SR, and others, for the American Diabetes Association',
		2016,
		'Physical activity/exercise and diabetes: a position statement',
		'Diabetes Care 39(11):2065-2079',
		null,
		'nerve harm can blunt the pulse'
	),
	kanaley2022: source(
		'seen',
		'Kanaley JA, Colberg SR, Corcoran MH, and others, for the American College of Sports Medicine',
		2022,
		'Exercise/physical activity in individuals with type 2 diabetes: a consensus statement',
		'Med Sci Sports Exerc 54(2):353-368',
		null,
		'carry carbohydrate if on insulin or on pills that raise it'
	),

	// Pregnancy and after
	acog2020: source(
		'secondary',
		'American College of Obstetricians and Gynecologists',
		2020,
		'Physical activity and exercise during pregnancy and the postpartum period, Committee Opinion 804',
		'Obstet Gynecol 135:e178-e188',
		null,
		'go by how hard it feels and the talk test; warning signs to stop'
	),
	mottola2018: source(
		'seen',
		'Mottola MF, Davenport MH, Ruchat SM, and others',
		2018,
		'2019 Canadian guideline for physical activity throughout pregnancy',
		'Br J Sports Med 52(21):1339-1346'
	),
	davenport2025: source(
		'seen',
		'Davenport MH, and others',
		2025,
		'Canadian guideline for physical activity in the first year after birth',
		'Canadian Society for Exercise Physiology, guideline page',
		null,
		'light activity first, then gradually more; title restated'
	),

	// Heat, air
	roberts2021: source(
		'seen',
		'Roberts WO, Armstrong LE, Sawka MN, and others, for the American College of Sports Medicine',
		2021,
		'ACSM expert consensus statement on exertional heat illness',
		'Curr Sports Med Rep 20(9):470-484'
	),
	heatMedicines: source(
		'seen',
		'US public health agencies',
		null,
		'Lists of medicines that raise the risk of heat illness',
		'public pages'
	),
	epaAir: source(
		'seen',
		'US Environmental Protection Agency',
		null,
		'Air quality guide',
		'public page',
		null,
		'people with asthma keep their quick-relief medicine at hand'
	),

	commonPractice: source(
		'memory',
		'none',
		null,
		null,
		'common practice, no published rule found for this exact point'
	)
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
