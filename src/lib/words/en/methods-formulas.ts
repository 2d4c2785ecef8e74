import type { LearnedFormulaId } from '$lib/guidance/learned-formulas.ts';
import type { FormulaId } from '$lib/physiology/formulas.ts';

interface FormulaWords {
	readonly name: string;
	/** The formula in words. */
	readonly sum: string;
	readonly people: string;
	/** Where it stops to hold; the numbers of its ranges stand beside it. */
	readonly holds: string;
	/** What to know about its error; the amount, where there is one, stands before it. */
	readonly error: string;
}

/** What is worked out of a runner's own outings. */
export const learnedWords: Readonly<Record<LearnedFormulaId, FormulaWords>> = {
	talkCeiling: {
		name: 'Your talking pulse',
		sum: 'It begins at 70 % of the reserve, with a spread of 14. For each place where the ceiling may lie we ask how likely your talk answers are there. A day may shift it by 5 beats, and 3 answers in 100 count as slips. Old answers count less: after 56 days, half.',
		people:
			'It begins from 14 adults who were not active. The rest is your own answers. It was tried on invented runners alone.',
		holds:
			'Answers after half a minute of reading, two minutes or more into a part, with a measured pulse, not in the heat. It needs 5 answers, and raises no band.',
		error: 'Worked out for you each time: four times in five it lies between the two numbers.'
	},
	trend: {
		name: 'Change at the same effort',
		sum: 'A straight line of least squares through your speeds, with the range in which it lies four times in five.',
		people: 'You alone. It is the line of every textbook.',
		holds:
			'Five outings or more over 21 days or more, on a treadmill, level, not hot, with comfortable talk. It takes for granted that days waver about one line.',
		error: 'Its own range. Where that has zero in it, no change is called.'
	},
	weeksAmount: {
		name: 'The week’s amount',
		sum: 'Effort times minutes, added up over the week.',
		people: 'None: it is a sum of what you told. 874 new runners stand behind the note on growth.',
		holds: 'Only where an effort was told. It says nothing about what is good for you.',
		error: 'People rate the same effort up to a step apart.'
	}
};

export const formulaWords: Readonly<Record<FormulaId, FormulaWords>> = {
	maximumByAge: {
		name: 'Maximum pulse from age',
		sum: '208, less seven tenths of the age in years.',
		people: '18,712 healthy people in 351 studies, and 514 more of 18 to 81 years.',
		holds: 'Adults only. Not with a medicine or an illness that slows the heart.',
		error: 'Found in 762 adults who were not active.'
	},
	maximumTested: {
		name: 'Maximum pulse from a supervised test',
		sum: 'The number that was measured, as it is. It takes the place of every estimate.',
		people: 'You alone. We never ask a beginner to make such a test.',
		holds: 'As long as your health and your medicines stay the same.',
		error: 'From one day to another. From memory, no source.'
	},
	maximumSeen: {
		name: 'Maximum pulse after a high pulse was seen',
		sum: 'Your true maximum is not below a pulse that you reached. So that part of the guess from age is cut away. The mean of the rest goes up, and its spread shrinks.',
		people: 'None: this is pure maths about the bell curve.',
		holds:
			'A chest strap in contact, held for 30 seconds, and confirmed by you. It is shown. It never lifts a band by itself.',
		error: 'As sure as the strap was.'
	},
	resting: {
		name: 'Resting pulse',
		sum: 'The mean of your last mornings, seven at most. Its spread is 3 beats over the square root of how many there are.',
		people:
			'10 adults, measured on several days. That a pulse settles in about four minutes was seen in 433 healthy adults.',
		holds:
			'On waking, after five quiet minutes. Not after coffee, in a fever, or with a medicine that slows the heart.',
		error: 'With one morning. With three it is 1.7 beats.'
	},
	reserve: {
		name: 'Pulse at a share of the reserve',
		sum: 'Reserve is maximum less resting pulse. The target is resting pulse plus a share of the reserve. Both spreads are joined: the nearer to the maximum, the more its doubt counts.',
		people: 'Young men on a treadmill in 1957. It has been used for all adults since.',
		holds: 'Not with a medicine or an illness that changes how the heart answers effort.',
		error: 'At 60 % of the reserve, with a maximum from age.'
	},
	talk: {
		name: 'Talk and pulse',
		sum: 'No formula: a table of what talk was like in three walks or runs of 20 minutes.',
		people:
			'14 adults who were not active, on a treadmill. Young adults were looked at in another study.',
		holds: 'People differ much more than the means do. Your own talk comes before it.',
		error:
			'The pulse at which talk was last comfortable lay at 79 % of the maximum, with a spread of 9.'
	},
	classes: {
		name: 'Classes of intensity',
		sum: 'Light begins at 30 % of the reserve, moderate at 40, vigorous at 60, near-maximal at 90. Each edge belongs to the class above it.',
		people: 'Healthy adults, from many studies put together.',
		holds: 'The scales do not agree for one person. A page names the one that it shows.',
		error: 'That of the number put in. Near an edge it is often a whole class.'
	},
	pulseCount: {
		name: 'Pulse counted by hand',
		sum: 'Beats, times 60, over the seconds. One beat more or less in 15 seconds is 4 a minute.',
		people: 'None: it is a sum. The spread is our own working out.',
		holds: 'Only if no beat is missed. The beat on which the clock starts is zero.',
		error: 'Half of one beat’s worth at most: 2 a minute for 15 seconds, 3 for 10.'
	},
	countDelay: {
		name: 'Why a count after stopping reads low',
		sum: 'The pulse falls while you count. The count sees the mean of that fall.',
		people: 'Athletes and students who were not active, after light effort.',
		holds:
			'Sitting still after stopping. Not while you walk on. It explains a low count and never corrects one.',
		error: 'It gives 20 beats where 20 to 27 were measured.'
	},
	uptake: {
		name: 'Oxygen that a speed takes',
		sum: 'Walk: a tenth of the speed, plus 1.8 times the climb, plus 3.5. Run: a fifth of the speed, plus 0.9 times the climb, plus 3.5. The climb is speed times incline.',
		people: 'Healthy adults at an even speed, with no hand on the rail.',
		holds:
			'Walking from 50 to 100 m/min. Running from 134 m/min, and from 80 if you truly run. Not downhill, and not in the first minutes.',
		error: 'Of the oxygen. From memory.'
	},
	uptakeReserve: {
		name: 'Share of the reserve as oxygen',
		sum: 'Rest, plus the share of what lies above rest. The same share of the pulse reserve is taken as the same effort.',
		people: '50 adults on a treadmill and 63 on a cycle.',
		holds: 'When the effort is even and the pulse has settled.',
		error: 'One person’s own line may lie higher or lower.'
	},
	reserveRelations: {
		name: 'How pulse follows oxygen',
		sum: 'Straight lines that studies found. On a treadmill: 1.5, plus 1.03 times the share of the oxygen reserve.',
		people: 'Healthy adults on treadmills, cycles and other machines.',
		holds: 'None of them took a medicine that slows the heart.',
		error: 'Of one person.'
	},
	speed: {
		name: 'Speed for a band',
		sum: 'The oxygen at each edge of the band, and the speed that takes it. Only speeds at which people do walk or run are shown.',
		people: 'As for the two sums that it joins.',
		holds: 'Only where your fitness was measured. A guess from questions sets no speed.',
		error: '15 to 20 % of the speed.'
	},
	capacityMeasured: {
		name: 'Fitness that a laboratory measured',
		sum: 'The number as the laboratory gave it.',
		people: 'Five trained people, 80 tests within four weeks.',
		holds: 'Months later it is no longer true.',
		error: 'From one test to the next.'
	},
	walkCheck: {
		name: 'Fitness from three walks',
		sum: 'A straight line of oxygen over pulse through three walks, led on to the maximum pulse.',
		people: 'As for the walking sum. The way of doing it stands in textbooks.',
		holds: 'Pulse read while walking, no hand on the rail, no medicine that changes the pulse.',
		error: '10 to 20 %, from memory. The page works out your own.'
	},
	mileWalk: {
		name: 'Fitness from a fast mile',
		sum: '132.853, less 0.0769 for each pound, less 0.3877 for each year, plus 6.315 for men, less 3.2649 for each minute, less 0.1565 for each beat a minute.',
		people: '343 healthy adults of 30 to 69 years.',
		holds: 'Not at other ages, and not with a jog in it. It is hard effort.',
		error: 'From memory.'
	},
	capacityFromQuestions: {
		name: 'Fitness from four questions',
		sum: '56.363, plus 1.921 for each step of activity, less 0.381 for each year, less 0.754 for each unit of body mass index, plus 10.987 for men.',
		people: '2,009 adults. One in ten was a woman.',
		holds: 'Not for very low fitness. It never sets a speed.',
		error: 'A fifth of what a beginner has.'
	},
	steadyPulse: {
		name: 'Pulse that a speed settles at',
		sum: 'The oxygen that the speed takes, as a share of your reserve. Then the pulse at that share.',
		people: 'As for the three sums that it joins.',
		holds: 'Where a run asks for more than the whole reserve, no number is given.',
		error: 'Those of the three sums together.'
	},
	pulseCourse: {
		name: 'How fast a pulse rises and falls',
		sum: 'In 57.6 seconds a pulse makes 63 % of its way up. In 90.6 seconds it makes 63 % of its way down.',
		people:
			'Up: 24 healthy men on a treadmill. Down: students who pedalled lightly in a seat. That walking is like this is our guess.',
		holds: 'Not after all-out effort. In long phases the pulse drifts up, and that is not in it.',
		error: 'About the line of one person whose own numbers are known. Far more where they are not.'
	},
	expectedPulse: {
		name: 'Expected pulse of an outing',
		sum: 'Each part takes the pulse some way towards where it would settle. The doubt of every number is led through the sum.',
		people: 'No model like this was checked on beginners who walk and run in turn.',
		holds: 'A picture, not a verdict. Heat, drift and talk are not in it.',
		error:
			'Shown as a band about the line. Right within 5 % in invented people, which proves the sum only.'
	},
	steadyCycle: {
		name: 'Runs and walks that repeat',
		sum: 'Where the pulse comes to stand when the same run and walk go on and on.',
		people: 'As for the rise and fall.',
		holds: 'Equal runs and equal walks.',
		error: 'As for the rise and fall.'
	},
	longestRun: {
		name: 'Longest run inside a band',
		sum: 'The rise, solved for the time at which it meets the upper edge.',
		people: 'As for the rise and fall.',
		holds: 'A first guess for a beginner. The line that you can say decides.',
		error: 'As for the rise and fall.'
	},
	shortestRecovery: {
		name: 'Shortest walk between two runs',
		sum: 'The fall, solved for the time at which it meets the recovery band. “Never” is an answer.',
		people: 'As for the rise and fall.',
		holds: 'The fall during a walk is the least sure part of it.',
		error: 'As for the rise and fall.'
	},
	oneBreath: {
		name: 'Counting on one breath',
		sum: 'The count while moving, over the count at rest. Aim at 40 to 50 %, or at 30 to 40 % from a count of 25.',
		people: '34, 40 and 36 healthy young adults.',
		holds: 'Not checked in older beginners.',
		error: 'One count either way is 3 to 5 points.'
	},
	growth: {
		name: 'How fast running may grow',
		sum: 'No formula: two results. Those whose distance grew by over 30 % in two weeks had 1.59 times the injuries that come from distance. A programme that grew by 10 % a week saw as many injuries as the usual one.',
		people: '874 and 532 people who had just begun to run.',
		holds:
			'For groups, not for one person. The first result may be chance: it reaches from 0.96 to 2.66. So our 14 % a week is a caution, not a proven limit.',
		error: 'As wide as that interval.'
	},
	ratings: {
		name: 'Two older effort scales',
		sum: '6, plus 2.8 times the rating less 0.3, raised to 0.79. For reading studies only.',
		people: '16 men and 16 women on a cycle.',
		holds: 'Ratings from 0.3 to 7.97. Never shown as your own number.',
		error: 'About one step of either scale, from memory.'
	},
	uptakeByCapacity: {
		name: 'Share of the highest oxygen',
		sum: 'One at rest, plus the share of what lies above it, over the whole.',
		people: 'None: it follows from what reserve means.',
		holds: 'Where rest takes one MET, which is so by convention.',
		error: 'None but that.'
	},
	metsByAge: {
		name: 'METs and age',
		sum: 'A table: what a load in METs usually is at an age.',
		people: 'Adults of ordinary fitness for their age.',
		holds: 'It says nothing of one person. It is on the doctor’s page only.',
		error: 'One class off is usual.'
	},
	maximumFox: {
		name: 'Maximum pulse: 220 less age',
		sum: '220, less the age in years. Only for comparison.',
		people: 'A line drawn by eye through ten reports, most of them on men under 55.',
		holds: 'Too high before 40, too low after.',
		error: 'In adults who were not active.'
	},
	maximumGellish: {
		name: 'Maximum pulse: Gellish',
		sum: '206.9, less 0.67 of the age. Only for comparison.',
		people: '132 people of 27 to 78 years, in 908 tests.',
		holds: 'It was printed in three forms, which differ by a beat or two.',
		error: 'That of one person is not known. The small one that is quoted is that of the line.'
	},
	maximumGulati: {
		name: 'Maximum pulse: Gulati',
		sum: '206, less 0.88 of the age. Only for comparison.',
		people: '5,437 women without symptoms, 35 and older.',
		holds: 'The tests ended at symptoms, so it lies below a true maximum.',
		error: 'Not known for one person.'
	},
	maximumNes: {
		name: 'Maximum pulse: Nes',
		sum: '211, less 0.64 of the age. Only for comparison.',
		people: '3,320 healthy adults with a proven maximum.',
		holds: 'It was the same for women and men.',
		error: 'Of one person.'
	},
	bellCurve: {
		name: 'The bell curve',
		sum: 'Its height, the share below a place, and the place below which a share lies.',
		people: 'None: it is maths.',
		holds: 'Everywhere.',
		error: 'After the tenth digit. Checked beside another library.'
	},
	units: {
		name: 'Units',
		sum: 'A mile is 1609.344 metres, a pound 0.45359237 kilograms, an inch 2.54 centimetres.',
		people: 'None: these are set by treaty.',
		holds: 'Everywhere.',
		error: 'None. Checked beside another library.'
	},
	rounding: {
		name: 'Rounding',
		sum: 'Once, where a number is shown. Half goes up.',
		people: 'None: our own rule.',
		holds: 'Everywhere.',
		error: 'Half of the last digit that you see.'
	}
};
