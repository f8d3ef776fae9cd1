/** Short names as lettered on a drawing, where a label has little room. */
const captions: Readonly<Record<string, string>> = {
  rudder_gap: 'Between the rudders',
  rudder_gap_swung: 'Rudders hard over',
  rudder_gap_vertical: 'Rudders, up and down',
  shaft_face_gap: 'Transom to shaft',
  drive_face_gap: 'Transom to drive unit',
  bearing_gap: 'Bearing to clamp',
  bracket_spacing: 'Between the clamps',
  drive_headroom: 'Clamp to drive unit',
  shim_stack: 'Shim stack',
  lowest_hole: 'Lowest hole, heeled',
  lower_bracket_edge: 'Flange to edge',
  port_foot_edge: 'Port foot to edge',
  starboard_foot_edge: 'Starboard foot to edge',
  single_foot_edge: 'Foot to edge',
  strut_spread: 'Between the arms',
  upper_bracket_height: 'Upper bracket',
  lower_bracket_height: 'Lower bracket',
  shaft_foot_height: 'Foot of the shaft',
  port_foot_height: 'Port foot',
  starboard_foot_height: 'Starboard foot',
  single_foot_height: 'Strut foot',
  port_foot_y: 'Port foot',
  starboard_foot_y: 'Starboard foot',
  single_foot_y: 'Strut foot',
  shaft_offset: 'Shaft',
};

const parts: Readonly<Record<string, string>> = {
  vane_rudder_span: 'Auxiliary rudder',
  rudder_overhang: "The boat's own rudder",
  transom_rake: 'Transom',
  drive_overlap: 'Drive unit',
  shaft_foot_height: 'Shaft',
  shim_count: 'Shims',
  wedge_edge: 'Wedge',
  bolt_diameter: 'Bolts',
  upper_bracket_height: 'Upper bracket',
  lower_bracket_height: 'Lower bracket',
  port_foot_height: 'Port strut',
  starboard_foot_height: 'Starboard strut',
  single_foot_height: 'Strut',
};

/** The lettered name of a drawn part. */
export const partTitle = (part: string): string => parts[part] ?? captionOf(part);

/** The lettered name of a result or choice; a name without one of its own is spelled out. */
export function captionOf(name: string): string {
  const known = captions[name];
  if (known !== undefined) return known;
  const words = name.replaceAll('_', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
