/** A note that no limit covers; numbers of the plan are put in where they help. */
export interface Note {
  readonly title: string;
  readonly says: (figure: (name: string) => string) => string;
}

/** Notes of the model, in the order of the work. Figures named in them come from the model or the plan. */
export const NOTES: readonly Note[] = [
  {
    title: 'The manual and the workbook disagree',
    says: () =>
      'The gear’s manual wins. Then the yard, the surveyor, and the rules that apply where the boat is used.',
  },
  {
    title: 'Loaded or light',
    says: () =>
      'Heights here are from the waterline with the boat loaded as it sails. A boat lying light floats higher: measure against the waterline mark of the loaded boat, not against the water of the day.',
  },
  {
    title: 'Astern, or uncoupled',
    says: (figure) =>
      `Turned right round, the auxiliary rudder would pass the boat’s own by ${figure('rudder_gap_turned')}; minus means they meet. Lash the auxiliary rudder before going astern.`,
  },
  {
    title: 'A wedge leaves faces at an angle',
    says: (figure) =>
      `The wedge is ${figure('wedge_middle')} at its middle. Where there is one, bolt head and nut do not sit square: use taper washers, or a wedge inside as well.`,
  },
  {
    title: 'Loose sheets creep',
    says: (figure) =>
      `Plastic shims flow under load. Tighten again after a day, a week and a month. The packing is ${figure('lower_packing')}; past four thirds of the bolt’s diameter (${figure('bolt_diameter')}) use rigid sleeves or one bonded block. If the clamping is lost, the bolts bend: ${figure('shim_bolt_bending')} in their cores.`,
  },
  {
    title: 'Which steel the stock is made of',
    says: (figure) =>
      `The stock’s yield is taken as ${figure('stock_yield')}. Duplex bar has about 450 MPa, plain 316 bar 205 MPa: with the plain bar the stock’s share of ${figure('stock_utilisation')} grows by 450 over 205, to more than twice as much.`,
  },
  {
    title: 'What gives first',
    says: (figure) =>
      `Stock ${figure('stock_utilisation')}, tube ${figure('tube_utilisation')}, struts ${figure('strut_utilisation')}, lower bolts ${figure('bolt_utilisation')}, skin ${figure('skin_utilisation')}: the largest share gives first. Blade or stock should go before skin and bolts, because they are not the hull.`,
  },
  {
    title: 'Is 0.9 bad',
    says: () =>
      'No: a share of 0.9 is inside. It says that a tenth of what the part is allowed to bear is left, on top of the factors already taken. It also says that a small surprise uses it up.',
  },
  {
    title: 'The single strut’s customary length',
    says: (figure) =>
      `Single struts are customarily at most 18 in long. That is a steering-load figure: the everyday force here is ${figure('steering_force')}, at stall it is ${figure('side_force')}. Common practice, no source.`,
  },
  {
    title: 'The clamps’ grip',
    says: (figure) =>
      `Sloping struts and weight push along the shaft with ${figure('clamp_slip')}. Hold that beside what the manual says the clamps grip. Friction alone must not hold the shaft.`,
  },
  {
    title: 'Bearings, clamps, bracket arms, hinge pins',
    says: () => 'They are not judged here at all. Their strength is the gear’s own: see its manual.',
  },
  {
    title: 'Bending, slamming, fatigue',
    says: () =>
      'How far the tube bends, what a wave does to it, and how bolts tire are not limits here. A boat that lies in a seaway for weeks asks for more margin than a coastal one.',
  },
  {
    title: 'If the boat touches bottom',
    says: () =>
      'Then the auxiliary rudder may touch first. Nothing here judges that. Know how the blade breaks away or lifts before you need it.',
  },
  {
    title: 'Can the nuts be reached',
    says: () =>
      'Look inside at every hole before you drill it: a locker, a stringer, wiring or a tank may be there, and somebody must hold the spanner.',
  },
];
