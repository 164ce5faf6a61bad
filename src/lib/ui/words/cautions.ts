import type { Caution } from '#core/lessons';

/**
 * What a grown-up is told, and when. Each text is plain, says what to do, and is followed on
 * screen by `localAdvice`. The source of each stands beside it.
 */
export const cautionWords: Readonly<Record<Caution, string>> = {
  // Eye specialists' case reports (JAMA journals): seconds can injure, and it does not hurt at
  // first. The American Academy of Ophthalmology says the same (from memory).
  sun: 'Never look at the sun, not even for a second and not through sunglasses. Look at the shadow.',
  // US National Weather Service.
  thunder:
    'When you hear thunder, go indoors or into a hard-topped car, and stay until 30 minutes after the last of it. Skip the reading: a blank is fine.',
  // US Food and Drug Administration, Bad Bug Book.
  beans:
    'Dry or raw beans are for planting, not for eating: four or five raw red kidney beans can make a person very ill within hours. With small children about, sow another bean or a pea. If some were eaten, call your poison help line.',
  // Caring for Our Children 6.3.5.2 (drowning); US Centers for Disease Control and Prevention
  // (mosquitoes).
  water:
    'Empty buckets and tubs at once: a young child can drown in very little water. Tip out the gauge and saucers at least once a week, against mosquitoes.',
  // US National Pesticide Information Center; label rules of the Federal Seed Act (from memory).
  'treated-seed': 'Brightly dyed seed is coated with pesticide. Buy untreated seed for children.',
  // US Consumer Product Safety Commission, 16 CFR 1501 (the cylinder is 1.25 by 2.25 in); American
  // Academy of Pediatrics 2010 lists nuts and seeds as hazards under four.
  'small-parts':
    'Keep seeds, beads and counters away from children under three, and out of every mouth, nose and ear. What fits in a tube 1 1/4 inches wide is small enough to choke on.',
  // Common practice, no source.
  allergy:
    'Ask first about allergy and asthma: beans, peanuts, wheat, pollen, latex, mould. Choose another seed if there is any doubt.',
  // Hand washing (US Centers for Disease Control and Prevention) and extension advice, from memory.
  soil: 'Wash hands after touching soil and seeds. Cover cuts. Use fresh potting mix. Throw mouldy paper towels out without sniffing them.',
  // Advice of poison centres, from memory.
  'unknown-plants':
    'Do not taste leaves or raw shoots: those of many kinds (tomato, rhubarb, bean) are not food.',
  // Common practice, no source.
  'heat-lamp':
    'A lamp or heat mat: a grown-up plugs it in, with dry hands. Never lay cloth or paper over it.',
  // Common practice, no source.
  glass: 'Use clear plastic, not glass jars.',
  // Common practice, no source.
  'sharp-tools':
    'A grown-up does the cutting, drilling and hot glue. Sticks are blunt, and capped or taller than eyes.',
  // US Centers for Disease Control and Prevention, from memory.
  outdoors:
    'Out of doors: a hat, water and shade, the agreed place away from the road, and a look for ticks afterwards.',
};
