/** What `--help` prints: of the program, and of each command. Every example is run by a test. */
export const helpPages = {
  program: `
  Examples
    $ kettlehand cook                            the bundled example
    $ kettlehand cook mint-pull                  another recipe
    $ kettlehand plan mint-pull --guests 24      what to buy, how hot, how many
    $ kettlehand rehearse --surprise any         first on a simulated pot
    $ kettlehand watch                           a second screen for the room
    $ kettlehand debrief                         what happened, what to change
    $ kettlehand cooks                           list, compare, export, import
    $ kettlehand handout mint-pull --html        a page for the audience
    $ kettlehand labels mint-pull                a label for what is given away
    $ kettlehand recipes                         what can be cooked
    $ kettlehand kitchen set altitude "1450 m"   tell it of your kitchen, once
    $ kettlehand follow mint-pull --json         the same cook from a pipe
    $ kettlehand syrup --item granulated-sugar=400g --celsius 121

  Commands
    cook, plan, rehearse, watch, follow, debrief, cooks, handout, labels,
    recipes, kitchen, syrup; each with --help

  Options
    --language en|de   the language to read (default: the kitchen's, else the
                       locale's)

  The person in charge, local rules for kitchens and children, food law and
  trained first aid come before anything this program says.
`,
  cook: `
  Examples
    $ kettlehand cook                     the bundled example
    $ kettlehand cook mint-pull           another recipe, by name
    $ kettlehand cook ./mine.yaml         your own, by path
    $ kettlehand cook mint-pull --plain   line by line: any terminal, a pipe, a
                                          screen reader
    $ kettlehand cook mint-pull --feed readings.txt
                                          a logging thermometer beside the
                                          keyboard: lines that are appended to a
                                          file, or written into a named pipe
                                          (mkfifo)

  Leads a cook from the cold pot to wrapped pieces. Every answer is saved at
  once; leave by any means, start again, and it goes on where it stood.

  Options
    --kitchen FILE   where it is cooked (default: the saved kitchen)
    --at 15:00       when the pulling starts before an audience: says how far
                     ahead or behind the cook is
    --feed PATH      take lines of a growing file or a named pipe as readings:
                     238, 238f or 114.5c a line
    --plain          lines instead of the full screen
    --quiet          no bell
    --no-color       no colour (so does NO_COLOR in the environment)
    --background dark|light   what is behind the text, where the terminal does
                              not tell
    --ascii          letters, lines and curve of ASCII signs alone, where
                     others come out as boxes or two cells wide
    --still          running numbers move on every ten seconds only, nothing
                     turns
    --screen-reader  no picture: what is new is appended, in the order in which
                     it is spoken
    --new            do not offer the unfinished ones

  The person in charge, local rules for kitchens and children, food law and
  trained first aid come before anything this program says.
`,
  plan: `
  Examples
    $ kettlehand plan hill-hall-ginger-pull
    $ kettlehand plan mint-pull --altitude 1450m --guests 24 --children 10
    $ kettlehand plan mint-pull --pot 3l --json
    $ kettlehand plan mint-pull --weights ounces
    $ kettlehand plan honey-pull --pressure 850hPa --explain
    $ kettlehand plan hill-hall-ginger-pull --at "tomorrow 15:00" --batches 2
    $ kettlehand plan hill-hall-ginger-pull --card --html > card.html

  What to buy and weigh, how hot on this thermometer here and today, what it
  gives.

  Options
    --altitude 1450m|4750ft   --pressure 850hPa (station pressure)
    --kitchen FILE
    --pieces N   --guests N [--children N]   --batch 1.5   --pot 3l
    --weights grams|ounces   the second: ounces, cups and spoons beside the
                             grams (default: the kitchen's)
    --at 15:00  the run sheet: counted back from when the pulling starts before
                the audience (also 3:30pm, "2026-11-28 15:00")
    --batches N with --at: so many cooks on one hob, one after the other
    --alone     with --at: one person does all of it, so the batches stand
                further apart
    --card      one page for the wall, for a power cut or a dead laptop; with
                --html a page to print
    --explain   formulas, inputs, sources, uncertainty
    --json      one JSON object
`,
  rehearse: `
  Examples
    $ kettlehand rehearse
      the bundled example, in about 4 minutes
    $ kettlehand rehearse mint-pull --surprise foam-over
      meet the foam before anyone watches
    $ kettlehand rehearse --surprise any --seed 7
      something, the same each time for the same seed
    $ kettlehand rehearse --auto
      the pot types its own readings
    $ kettlehand rehearse --auto --headless --json
      a simulated person types everything, for scripts

  The same cook, on a simulated pot and a clock that runs fast. "look" says what
  the dial shows and what is to be seen, "skip" goes to the next thing to do,
  "pause" and "go" stop and start the clock.

  Options
    --surprise NAME  foam-over, hot-hob, weak-hob, thermometer-off,
                     interruption, grains, overshoot, power-cut, early-touch,
                     burning-smell, or any (default: none)
    --seed N         the same number makes the same rehearsal
    --pace N         1 to 60 times as fast (default 30); slower by itself where
                     there is something to do at once
    --at 15:00       when the real pulling starts: the result tells clock times
                     (also "tomorrow 15:00")
    --kitchen FILE   where it is cooked (default: the saved kitchen)
    --auto           the pot types the readings
    --plain          lines instead of the full screen; --quiet no bell;
                     --no-color, --background dark|light, --ascii, --still,
                     --screen-reader as for cook
    --headless       with --auto: a simulated person, no screen
    --json           journal and result as one JSON object; the lines before it
                     go to standard error
`,
  follow: `
  Examples
    $ kettlehand follow hill-hall-ginger-pull --json < typed.txt
    $ my-logging-thermometer | kettlehand follow mint-pull --kitchen hall.yaml
    $ kettlehand follow honey-pull --from fold --journal today.jsonl

  Reads lines, each what a person would type in the console, or
  {"t": seconds, "typed": "..."}; answers each with the advice at that moment.

  Options
    --kitchen FILE   where it is cooked (default: the saved kitchen)
    --from PHASE     open in this phase, with all before it taken as confirmed
    --journal FILE   keep the cook there, or go on with the one it holds
    --json           one JSON object a line
`,
  watch: `
  Examples
    $ kettlehand watch                    on a second screen: the running cook,
                                          or the next one
    $ kettlehand watch 2026-11-25         that cook, by its id or a part of it
    $ kettlehand watch --once             what there is to see now, in lines,
                                          and end
    $ kettlehand watch --plain            lines that are only ever appended

  For the people in the room: the temperature and the stage in large letters,
  what is happening and why in plain words, when to stand back, and the
  presenter's line. It only ever reads: no key but q, Esc and Ctrl+C does
  anything, and the cook does not notice it. Notes, names and troubles are not
  shown.

  Options
    --once       say what there is to see and end; without a running cook that
                 fails
    --plain      lines instead of the full screen
    --no-color, --background dark|light, --ascii, --still, --screen-reader
                 as for cook
`,
  debrief: `
  Examples
    $ kettlehand debrief                      the last cook: what happened, what
                                              to change
    $ kettlehand debrief 2026-11-25           another, by its id or a part of it
    $ kettlehand debrief ./fair.jsonl         a journal or an exported cook, by
                                              path
    $ kettlehand debrief --html > fair.html   one page to print or hand out
    $ kettlehand debrief --chapters           times and titles for under a video

  Options
    --markdown   --html    to read and to print
    --json       --csv     for programs and spreadsheets (events and readings)
    --chapters             counted from "mark recording"

  A cook that is not finished is told as far as it went. "kettlehand cooks"
  lists them.
`,
  cooks: `
  Examples
    $ kettlehand cooks                                 all, the newest first
    $ kettlehand cooks --recipe ginger --since 2026-11-01
    $ kettlehand cooks compare 2026-11-25 2026-12-02   side by side: what
                                                       differed, what came of it
    $ kettlehand cooks export 2026-11-25 --to fair.kettlehand-cook
    $ kettlehand cooks import fair.kettlehand-cook
    $ kettlehand cooks delete 2026-11-25-143502-9f2c   asks first

  A cook is named by its id, or by a part of it that only one has.

  Options
    --recipe WORD   --since YYYY-MM-DD   --unfinished   --rehearsals
                    which are listed
    --to FILE       where to export; "-" is standard output
    --yes           delete without asking
    --json          list and compare as one JSON object
`,
  handout: `
  Examples
    $ kettlehand handout mint-pull
      a page for the audience, as Markdown
    $ kettlehand handout mint-pull --html > mint.html
      to print on A4 or Letter, or to send
    $ kettlehand handout mint-pull --pot 2l
      as much as a pot of two litres takes
    $ kettlehand handout mint-pull --have sugar=300g
      as much as what is at home is enough for

  Amounts in both systems, steps, the cold-water test, cautions, first aid,
  allergens, storage, your own words from the recipe's cues, and room for more.
  For any kitchen: it says how to shift the target for a hill or a thermometer
  that is off.

  Options
    --html   --markdown (default)
    --pieces N   --batch 1.5        how much, or
    --have ITEM=AMOUNT   --pot 2l   what there is at home, --have as often as
                         needed: the scarcest decides
`,
  labels: `
  Examples
    $ kettlehand labels mint-pull                      for a bag of ten pieces,
                                                       made today
    $ kettlehand labels mint-pull --net 100g
    $ kettlehand labels --cook 2026-11-25 --pieces 12  by what that cook
                                                       weighed, with its date
    $ kettlehand labels mint-pull --checked wheat      the packet was read: no
                                                       wheat in it

  One block of text: ingredients by weight, allergens in capitals, net weight,
  date. Local food law decides what must stand on it; what is still to be
  checked is said on standard error.

  Options
    --pieces N   --net 100g   in one bag
    --date YYYY-MM-DD         made on (default: today, or the day of the cook)
    --checked WORD            an allergen ruled out by the packet; as often as
                              needed
    --kitchen FILE
`,
  recipes: `
  Examples
    $ kettlehand recipes                  list them
    $ kettlehand recipes show mint-pull   one, with its reasons
    $ kettlehand recipes check mine.yaml  is my file right?
    $ kettlehand recipes instead mint-pull honey   the same candy with another
                                                   syrup
    $ kettlehand recipes items            what ingredients are known

  Options
    --json   one JSON object
`,
  kitchen: `
  Examples
    $ kettlehand kitchen                          what is known of your kitchen
    $ kettlehand kitchen set altitude "1450 m"    tell it
    $ kettlehand kitchen set stove gas
    $ kettlehand kitchen set learned.carry-over "3 F"   instead of what earlier
                                                        cooks taught; none
                                                        forgets it
    $ kettlehand kitchen path                     where the file is

  Options
    --json   one JSON object
`,
  syrup: `
  Examples
    $ kettlehand syrup --item granulated-sugar=400g --item water=100g
    $ kettlehand syrup --item glucose-syrup:42=200g --celsius 124
    $ kettlehand syrup --item honey=200g --solids 0.92 --altitude 1450m --json

  Options
    --item ITEM=AMOUNT      repeatable; glucose-syrup:42=200g has its DE
    --pressure, --altitude  where (default: sea level)
    --celsius T, --solids F one of them replaces the water given
    --json                  one JSON object
`,
};
