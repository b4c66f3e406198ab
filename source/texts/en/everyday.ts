import { type Everyday, everydayIn } from '../everyday.js';

const sayings: Everyday = {
  urgent: [
    [
      'burn*|scald*|hurt*|ouch|ow',
      'Skin: cool running water now, then type "burn". The sugar burns: "scorched". Flames: "fire".',
    ],
    ['fire|flame*', 'Flames: lid over the pot, heat off, then type "fire".'],
    ['smok*|smell*|scorch*', 'The sugar burns: pot off the heat, then type "scorched".'],
    [
      "chok*|can't breathe|cannot breathe",
      'Call for help, then type "choking". An allergic reaction: "allergy".',
    ],
    ['allerg*', 'Call for help, then type "allergy".'],
    ['overflow*|over the rim|boil* over|running over', 'Heat off first, then type "overflow".'],
    ['foam*|froth*', 'Foam: heat down, slide the pot off, then type "foam".'],
    ['glass|shatter*|mercury', 'Broken glass at the pot: everybody stands back, type "glass".'],
    ['spill*|spilt', 'Syrup on floor or table: nobody steps there, type "spill".'],
  ],
  others: [
    ['no power|power|electric*|lights out|blackout', 'No power: knob to off, then type "power".'],
    ['grain*|crystal*|sandy', 'Grains in the syrup: type "trouble grains".'],
    [
      'too far|past it|overshot|overcook*|too dark',
      'Past the target: pot off, then type "trouble overshoot".',
    ],
    [
      'too hot',
      'Past the target: "trouble overshoot". Too hot for hands: tools only, measure, type "middle 46c".',
    ],
    ['too soft|sticky|sticks|runny', 'Too soft: type "trouble soft". What a drop feels like: "soft ball".'],
    [
      'too hard|too stiff|stiff|brittle',
      'Too stiff to pull: type "trouble stiff". What a drop feels like: "hard ball".',
    ],
    [
      'broken|thermometer|dial|probe|temperature',
      'What it shows is typed as digits: 238. It shows nonsense: "trouble thermometer". There is none: "thermometer none".',
    ],
    [
      'hard|firm|soft|ball|crack|thread*',
      'What a drop felt like: "soft ball", "firm ball", "hard ball", "soft crack" or "hard crack".',
    ],
    ['off|on|turn* off|turn* on', 'Type what is off or on: "heat off", "pot off", "lid off".'],
    [
      'low|lower|medium|high|higher|up|down|turn*',
      'Where the knob stands: type "heat low", "heat medium" or "heat high".',
    ],
    [
      'boil*|bubbl*|dissolved|clear|next|go on|continue|finished|ready|ok|okay|did it',
      'If that is what the step waits for, type "done".',
    ],
    ['yes|yeah|yep|sure|of course|right|true', 'If it is true, type "yes".'],
    ['no|nope|nah|not|false', 'If it is not, type "no".'],
    ['bye|close', 'To leave, type "leave". The cook is kept.'],
    ['back|mistake|wrong|oops|sorry|typo', 'What was typed last is taken back with "undo".'],
    [
      'kid*|child*|visitor*|adult*|glove*',
      'Whose hands pull: type "hands children", "hands visitors", "hands bare" or "hands gloved".',
    ],
    ['add* water|more water|water added', 'Water that went in: type it like this: "water 30ml".'],
    ['pour*', 'If that is what the step waits for, type "done". Poured long ago: "at fold".'],
    ['cancel|abort|give up|throw away', 'A batch that is given up: type "stop".'],
    ['wait|pause|moment', 'Nothing has to be typed while you wait; the clock goes on.'],
    [
      'hello|hi|what|why|how|when|where|who|help',
      'What to do now, and why, stands above. "help" shows the words.',
    ],
    ['about|around|degree*', 'A reading is digits alone: 238, 238f or 114.5c.'],
  ],
};

export const everyday = everydayIn(sayings);
/** For the tests: what is to be typed must be understood. */
export const everydaySayings = sayings;
