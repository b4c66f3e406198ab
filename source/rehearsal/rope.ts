import { viscosityPascalSecond } from '../sugar/glass.js';

/** Candy in hands: it cools, takes up air and stiffens. */
export type Rope = {
  advance(seconds: number): void;
  celsius(): number;
  /** Share of its volume that is air, 0 to about 0.25. */
  airShare(): number;
  /** What hands feel: viscosity with the air worked in. */
  pascalSecond(): number;
  droops(): boolean;
  /** Satin, and too tough to pull on. */
  stiff(): boolean;
};

/** An egg-sized piece in warm hands, folded in the room's air. Our judgement. */
const coolsInSeconds = 1400;
/** Pulled candy is about a fifth air (density 1.1-1.3 against 1.45); worked in over some minutes. Our judgement. */
const mostAir = 0.25;
const airInSeconds = 300;
/** Air between the strands makes them stiffer to the hand. Our judgement. */
const stiffenedByAir = 30;
/** Where a rope held out by one hand no longer runs down, and where arms give up. Our judgement. */
const droopsBelow = 3e5;
const stiffAbove = 1.5e6;
/** Without air it runs down however cool it is; satin comes with the air. */
const holdsFromAir = 0.08;
const satinFromAir = 0.17;
/**
 * Hands report less difference between recipes than Gordon and Taylor's mean gives, whose spread is 6 K for one
 * composition (sugar/glass.ts): fat and starch, left out there, soften hard ones and stiffen soft ones. Our judgement.
 */
const usualGlassCelsius = 6;
const shareOfDifference = 0.4;

/** Temperature against the glass transition gives the viscosity (Williams, Landel & Ferry 1955, sugar/glass.ts). */
export const ropeOf = (startCelsius: number, handsCelsius: number, glassCelsius: number): Rope => {
  let celsius = startCelsius;
  let air = 0;
  const glass = usualGlassCelsius + shareOfDifference * (glassCelsius - usualGlassCelsius);
  const felt = (): number => viscosityPascalSecond(celsius, glass) * (1 + stiffenedByAir * air);
  return {
    advance: (seconds) => {
      celsius = handsCelsius + (celsius - handsCelsius) * Math.exp(-seconds / coolsInSeconds);
      air = mostAir + (air - mostAir) * Math.exp(-seconds / airInSeconds);
    },
    celsius: () => celsius,
    airShare: () => air,
    pascalSecond: felt,
    droops: () => felt() < droopsBelow || air < holdsFromAir,
    stiff: () => felt() > stiffAbove && air > satinFromAir,
  };
};
