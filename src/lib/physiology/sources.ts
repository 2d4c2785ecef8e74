/**
 * How the source was known to whoever wrote the number down.
 * seen: the number stands in a copy of the source that was read, mostly its abstract or one table.
 * secondary: quoted in another publication, named in the note.
 * memory: known by heart or by reference only; to be looked up before it is relied on.
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

/** Everything that a formula, a limit or a published value of this folder rests on. */
export const sources = {
	// Maximum pulse
	tanaka2001: source(
		'seen',
		'Tanaka H, Monahan KD, Seals DR',
		2001,
		'Age-predicted maximal heart rate revisited',
		'J Am Coll Cardiol 37(1):153-156',
		'10.1016/S0735-1097(00)01054-8',
		'Equation seen in many later papers; numbers of studies and people from memory.'
	),
	sarzynski2013: source(
		'seen',
		'Sarzynski MA, Rankinen T, Earnest CP, et al.',
		2013,
		'Measured maximal heart rates compared to commonly used age-based prediction equations in the HERITAGE Family Study',
		'Am J Hum Biol 25(5):695-701',
		null,
		'Sedentary adults, n = 762. PMC3935487.'
	),
	nes2013: source(
		'seen',
		'Nes BM, Janszky I, Wisloff U, Stoylen A, Karlsen T',
		2013,
		'Age-predicted maximal heart rate in healthy subjects: the HUNT Fitness Study',
		'Scand J Med Sci Sports 23(6):697-704',
		'10.1111/j.1600-0838.2012.01445.x'
	),
	gellish2007: source(
		'seen',
		'Gellish RL, Goslin BR, Olson RE, McDonald A, Russi GD, Moudgil VK',
		2007,
		'Longitudinal modeling of the relationship between age and maximal heart rate',
		'Med Sci Sports Exerc 39(5):822-829',
		'10.1249/mss.0b013e31803349c6',
		'Its curved form is quoted second-hand.'
	),
	jackson2007: source(
		'seen',
		'Jackson AS',
		2007,
		'Estimating maximum heart rate from age: is it a linear relationship?',
		'Med Sci Sports Exerc 39(5)',
		'10.1249/mss.0b013e318054d3ca',
		'Commentary on gellish2007; prints its unrounded line.'
	),
	fox1971: source(
		'secondary',
		'Fox SM 3rd, Naughton JP, Haskell WL',
		1971,
		'Physical activity and the prevention of coronary heart disease',
		'Ann Clin Res 3:404-432',
		null,
		'History of the equation in robergs2002.'
	),
	robergs2002: source(
		'seen',
		'Robergs RA, Landwehr R',
		2002,
		'The surprising history of the "HRmax=220-age" equation',
		'J Exerc Physiol Online 5(2):1-10'
	),
	gulati2010: source(
		'seen',
		'Gulati M, Shaw LJ, Thisted RA, Black HR, Bairey Merz CN, Arnsdorf MF',
		2010,
		'Heart rate response to exercise stress testing in asymptomatic women: the St. James Women Take Heart Project',
		'Circulation 122(2):130-137',
		'10.1161/CIRCULATIONAHA.110.939249',
		'Symptom-limited tests, so lower than a true maximum.'
	),

	// Reserve
	karvonen1957: source(
		'seen',
		'Karvonen MJ, Kentala E, Mustala O',
		1957,
		'The effects of training on heart rate; a longitudinal study',
		'Ann Med Exp Biol Fenn 35(3):307-315',
		null,
		'Reference and method as quoted everywhere; full text not read.'
	),
	swain1994: source(
		'seen',
		'Swain DP, Abernathy KS, Smith CS, Lee SJ, Bunn SA',
		1994,
		'Target heart rates for the development of cardiorespiratory fitness',
		'Med Sci Sports Exerc 26(1):112-116',
		null,
		'Means seen; the line 0.64 x + 37 from memory.'
	),
	swain1997: source(
		'seen',
		'Swain DP, Leutholtz BC',
		1997,
		'Heart rate reserve is equivalent to %VO2 reserve, not to %VO2max',
		'Med Sci Sports Exerc 29(3):410-414',
		'10.1097/00005768-199703000-00018'
	),
	swain1998: source(
		'seen',
		'Swain DP, Leutholtz BC, King ME, Haas LA, Branch JD',
		1998,
		'Relationship between % heart rate reserve and % VO2 reserve in treadmill exercise',
		'Med Sci Sports Exerc 30(2):318-321'
	),
	dalleck2006: source(
		'seen',
		'Dalleck LC, Kravitz L',
		2006,
		'Relationship between %heart rate reserve and %VO2 reserve during elliptical crosstrainer exercise',
		'J Sports Sci Med 5:662-671'
	),
	astrand1964: source(
		'secondary',
		'Astrand P-O, Cuddy TE, Saltin B, Stenberg J',
		1964,
		'Cardiac output during submaximal and maximal work',
		'J Appl Physiol 19:268-274',
		null,
		'23 adults; data typed in by others, regressions our own.'
	),
	austinWorksheet: source(
		'seen',
		'Austin Community College',
		null,
		null,
		'Teaching worksheet on target heart rate',
		null,
		'A worked example.'
	),
	reserveTeachingPage: source(
		'seen',
		'Various teachers',
		null,
		null,
		'Teaching pages with worked examples of the reserve method',
		null,
		'Worked examples only.'
	),

	// Intensity
	garber2011: source(
		'seen',
		'Garber CE, Blissmer B, Deschenes MR, Franklin BA, Lamonte MJ, Lee I-M, Nieman DC, Swain DP',
		2011,
		'Quantity and quality of exercise for developing and maintaining cardiorespiratory, musculoskeletal, and neuromotor fitness in apparently healthy adults: guidance for prescribing exercise',
		'Med Sci Sports Exerc 43(7):1334-1359',
		'10.1249/MSS.0b013e318213fefb',
		'Columns seen in later papers adapted from it; METs and capacity columns from memory.'
	),
	pag2018: source(
		'seen',
		'US Department of Health and Human Services',
		2018,
		'Physical Activity Guidelines for Americans, 2nd edition',
		'Washington, DC, page on relative intensity'
	),

	// Effort scales
	borgE2001: source(
		'seen',
		'Borg E',
		2001,
		'A comparison between two rating scales for perceived exertion',
		'Proc Annu Meet Int Soc Psychophysics 17',
		null,
		'16 men and 16 women on a cycle; abstract with the equation. Year and volume from memory.'
	),
	foster2001: source(
		'seen',
		'Foster C, Florhaug JA, Franklin J, et al.',
		2001,
		'A new approach to monitoring exercise training',
		'J Strength Cond Res 15(1):109-115'
	),

	// Talk test
	persinger2004: source(
		'seen',
		'Persinger R, Foster C, Gibson M, Fater DCW, Porcari JP',
		2004,
		'Consistency of the talk test for exercise prescription',
		'Med Sci Sports Exerc 36(9):1632-1636'
	),
	foster2009: source(
		'seen',
		'Foster C, Porcari JP, Gibson M, Wright G, Greany J, Talati N, Recalde P',
		2009,
		'Translation of submaximal exercise test responses to exercise prescription using the Talk Test',
		'J Strength Cond Res 23(9):2425-2429',
		'10.1519/jsc.0b013e3181c02bce',
		'14 sedentary adults, treadmill; abstract.'
	),
	foster2008: source(
		'seen',
		'Foster C, Porcari JP, Anderson J, et al.',
		2008,
		'The Talk Test as a marker of exercise training intensity',
		'J Cardiopulm Rehabil Prev 28(1):24-30',
		null,
		'Talk takes over two minutes to turn, and errors are on the side of passing; abstract. Pages from memory.'
	),
	schroeder2017: source(
		'seen',
		'Schroeder MM, Foster C, Porcari JP, Mikat RP',
		2017,
		'Effects of speech passage length on accuracy of predicting metabolic thresholds using the talk test',
		'Kinesiology 49(1)',
		null,
		'18 healthy adults on a cycle, texts of 31, 62 and 93 words; abstract. Volume from memory.'
	),
	porcari2018: source(
		'seen',
		'Porcari JP, Falck-Wiese K, Suckow-Stenger S, et al.',
		2018,
		'Comparison of the talk test and percent heart rate reserve for exercise prescription',
		'Kinesiology 50(1):3-10',
		null,
		'44 inactive adults, ten weeks; abstract.'
	),
	quinn2011: source(
		'seen',
		'Quinn TJ, Coons BA',
		2011,
		'The Talk Test and its relationship with the ventilatory and lactate thresholds',
		'J Sports Sci 29(11):1175-1182'
	),
	norman2001: source(
		'seen',
		'Norman JF, Kracl J, Parker D, Richter A',
		2001,
		'Comparison of the counting talk test and heart rate reserve methods for estimating exercise intensity in healthy young adults',
		'J Exerc Physiol Online 4(4):15-22',
		null,
		'34 adults of 20 to 31 years; abstract.'
	),
	norman2008: source(
		'seen',
		'Norman JF, Hopkins E, Crapo E',
		2008,
		'Validity of the counting talk test in comparison with standard methods of estimating exercise intensity in young healthy adults',
		'J Cardiopulm Rehabil Prev 28(3):199-202',
		null,
		'40 adults of about 22 years; abstract. Volume from memory.'
	),
	loose2012: source(
		'seen',
		'Loose BD, Christiansen AM, Smolczyk JE, Roberts KL, Budziszewska A, Hollatz CG, Norman JF',
		2012,
		'Consistency of the counting talk test for exercise prescription',
		'J Strength Cond Res 26(6):1701-1707',
		'10.1519/JSC.0b013e318234e84c',
		'36 healthy young adults; abstract.'
	),

	// Oxygen and speed
	kjfm2020: source(
		'seen',
		'Authors not noted',
		2020,
		null,
		'Korean J Fam Med, table 1, PMC8321902',
		null,
		'Prints absolute METs of the intensity classes.'
	),
	acsmMetabolic: source(
		'seen',
		'Bushman B, from American College of Sports Medicine',
		2020,
		"Metabolic calculations of ACSM's Guidelines for Exercise Testing and Prescription, 10th edition, table 6.3",
		"ACSM's Health Fit J 24(3):6-10 and 24(4):5-8"
	),
	acsmTeachingSlides: source(
		'seen',
		'Various teachers',
		null,
		null,
		'Teaching slides and sheets with worked examples of the ACSM equations'
	),
	plymouthTable: source(
		'seen',
		'Plymouth State University',
		2020,
		null,
		'Treadmill protocol table in an open teaching repository'
	),
	foster1996: source('seen', 'Foster C, et al.', 1996, null, 'Med Sci Sports Exerc 28:752-756'),
	jonesDoust1996: source(
		'seen',
		'Jones AM, Doust JH',
		1996,
		'A 1% treadmill grade most accurately reflects the energetic cost of outdoor running',
		'J Sports Sci 14(4):321-327',
		'10.1080/02640419608727717'
	),

	// Capacity
	jackson1990: source(
		'seen',
		'Jackson AS, Blair SN, Mahar MT, Wier LT, Ross RM, Stuteville JE',
		1990,
		'Prediction of functional aerobic capacity without exercise testing',
		'Med Sci Sports Exerc 22(6):863-870',
		null,
		'Equation seen in PMC7428991.'
	),
	kline1987: source(
		'seen',
		'Kline GM, Porcari JP, Hintermeister R, et al.',
		1987,
		'Estimation of VO2max from a one-mile track walk, gender, age, and body weight',
		'Med Sci Sports Exerc 19(3):253-259',
		null,
		'Litre form seen; form per kilogram second-hand.'
	),
	katch1982: source(
		'seen',
		'Katch VL, Sady SS, Freedson P',
		1982,
		'Biological variability in maximum aerobic power',
		'Med Sci Sports Exerc 14(1):21-25',
		'10.1249/00005768-198201000-00004',
		'Abstract seen: five trained people, 80 tests, 5.6 % together.'
	),
	kellerThesis: source(
		'seen',
		'Keller',
		null,
		null,
		'Thesis on walking tests',
		null,
		'The one-mile walk misjudged adults of 18 to 29.'
	),
	submaximalTextbooks: source(
		'memory',
		'Various textbooks',
		null,
		null,
		'Teaching of submaximal tests: two or three stages, a line carried to the maximum',
		null,
		'Error of 10 to 20 % with a maximum from age.'
	),

	// Pulse in time
	hunt2015: source(
		'seen',
		'Hunt KJ, Fankhauser SE, Saengsuwan J',
		2015,
		'Identification of heart rate dynamics during moderate-to-vigorous treadmill exercise',
		'BioMed Eng OnLine 14:117',
		'10.1186/s12938-015-0112-7',
		'24 healthy men.'
	),
	barak2011: source(
		'seen',
		'Barak OF, et al.',
		2011,
		null,
		'J Sports Sci Med 10(2):369-375, table 2'
	),
	wang2021: source(
		'seen',
		'Wang H, Hunt KJ',
		2021,
		null,
		'BioMed Eng OnLine',
		'10.1186/s12938-021-00875-7',
		'11 regular exercisers; first order 2.27 bpm about the curve, second order 2.07. Authors from memory.'
	),
	coyle2001: source(
		'seen',
		'Coyle EF, Gonzalez-Alonso J',
		2001,
		'Cardiovascular drift during prolonged exercise: new perspectives',
		'Exerc Sport Sci Rev 29:88-92'
	),
	cole1999: source(
		'seen',
		'Cole CR, Blackstone EH, Pashkow FJ, Snader CE, Lauer MS',
		1999,
		'Heart-rate recovery immediately after exercise as a predictor of mortality',
		'N Engl J Med 341:1351-1357'
	),

	// Resting and counted pulse
	speed2023: source(
		'seen',
		'Speed C, Arneil T, Harle R, et al.',
		2023,
		'Measure by measure: resting heart rate across the 24-hour cycle',
		'PLOS Digit Health 2(4):e0000236',
		'10.1371/journal.pdig.0000236',
		'433 healthy adults.'
	),
	restingEcg2025: source(
		'seen',
		'Authors not noted',
		2025,
		null,
		'Digital Health',
		'10.1177/20552076251367506',
		'Ten adults with a chest recorder for 7 to 10 days: between-day variation 5 to 6 %; abstract.'
	),
	deVan2005: source(
		'seen',
		'De Van AE, Lacy BK, Cortez-Cooper MY, Tanaka H',
		2005,
		'Post-exercise palpation of pulse rates: its applicability to habitual exercisers',
		'Scand J Med Sci Sports 15(3):177-181',
		null,
		'20 young active adults; abstract. The 15 s wait comes from a secondary summary.'
	),
	heartRateMeasurement2011: source(
		'seen',
		'Bluetooth SIG',
		2011,
		'Heart Rate Measurement',
		'Heart Rate Service 1.0, and GATT Specification Supplement, 3.113',
		null,
		'Fields and flags in a published copy of the XML description (0x2A37).'
	),
	gattParsers: source(
		'seen',
		'Open libraries that parse Bluetooth values',
		null,
		null,
		'Unit tests of SmartGattLib and of blevalueparser, public repositories',
		null,
		'Messages of heart-rate sensors, as bytes, with what they mean.'
	),

	// Beginners
	buist2008: source(
		'seen',
		'Buist I, et al.',
		2008,
		'No effect of a graded training program on the number of running-related injuries in novice runners',
		'Am J Sports Med 36(1):33-39',
		'10.1177/0363546507307505'
	),
	nielsen2014: source(
		'seen',
		'Nielsen RO, et al.',
		2014,
		'Excessive progression in weekly running distance and risk of running-related injuries',
		'J Orthop Sports Phys Ther 44(10):739-747',
		null,
		'Pages from memory.'
	),

	// Heat
	armstrong2007: source(
		'secondary',
		'Armstrong LE, Casa DJ, Millard-Stafford M, et al., for the American College of Sports Medicine',
		2007,
		'Exertional heat illness during training and competition',
		'Med Sci Sports Exerc 39(3):556-572',
		null,
		'Table of wet-bulb globe temperatures as restated in PMC5094838; its lowest edge from memory.'
	),
	nwsHeatIndex: source(
		'seen',
		'US National Weather Service',
		null,
		null,
		'Public pages on the heat index and on lightning',
		null,
		'Classes from 80, 90 and 103 F; full sun can add up to 15 F.'
	),

	// Mathematics and units
	nistSp811: source(
		'memory',
		'Thompson A, Taylor BN',
		2008,
		'Guide for the Use of the International System of Units',
		'NIST Special Publication 811',
		null,
		'Mile, pound and inch are exact by definition.'
	),
	abramowitzStegun1964: source(
		'memory',
		'Abramowitz M, Stegun IA',
		1964,
		'Handbook of Mathematical Functions',
		'National Bureau of Standards, chapter 26'
	),
	west2005: source(
		'memory',
		'West G',
		2005,
		'Better approximations to cumulative normal functions',
		'Wilmott Magazine'
	),
	wichura1988: source(
		'memory',
		'Wichura MJ',
		1988,
		'Algorithm AS 241: the percentage points of the normal distribution',
		'Appl Stat 37(3):477-484'
	),
	johnsonKotz1994: source(
		'memory',
		'Johnson NL, Kotz S, Balakrishnan N',
		1994,
		'Continuous Univariate Distributions, volume 1, 2nd edition',
		'Wiley, section 13.10'
	)
} satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;

/** Every source with its id, in the order of the table. */
export const sourceIds = Object.keys(sources) as readonly SourceId[];
