package kitwright.assessment;

import java.util.List;

/** Assessments that between them state every key that bears on a verdict. */
final class Samples {
  private Samples() {}

  private static final String WOODS =
      """
      materials:
        - {id: wood-a, kind: timber, basis: mean, density: 450 kg/m3, E: 10 GPa, E-across: 0.5 GPa, G: 0.6 GPa, G-across: 60 MPa, poisson: 0.35, tensile-strength: 70 MPa, compressive-strength: 38 MPa, tensile-strength-across: 2.4 MPa, compressive-strength-across: 4 MPa, bending-strength: 68 MPa, shear-strength: 8 MPa, shear-strength-across: 2 MPa, scatter: 15 %, moisture: 12 %, source: the yard}
        - {id: wood-b, kind: timber, basis: mean, density: 560 kg/m3, E: 11 GPa, E-across: 0.6 GPa, G: 0.7 GPa, G-across: 70 MPa, poisson: 0.35, tensile-strength: 60 MPa, compressive-strength: 34 MPa, tensile-strength-across: 2 MPa, compressive-strength-across: 5 MPa, bending-strength: 58 MPa, shear-strength: 7 MPa, shear-strength-across: 1.8 MPa, scatter: 14 %, moisture: 12 %, source: the yard}
        - {id: sticky, kind: glue, density: 1200 kg/m3, bond-strength: 1 MPa, basis: mean, scatter: 20 %, source: the maker}
        - {id: al, kind: metal, metal: aluminium, basis: minimum, density: 2700 kg/m3, E: 70 GPa, poisson: 0.3, yield-strength: 110 MPa, scatter: 5 %, source: the mill}
        - {id: al-b, kind: metal, metal: aluminium, basis: minimum, density: 2700 kg/m3, E: 70 GPa, G: 26 GPa, poisson: 0.3, yield-strength: 100 MPa, shear-strength: 50 MPa, scatter: 5 %, source: the mill}
        - {id: skin, kind: laminate, isotropic: yes, basis: mean, poisson: 0.3, density: 1700 kg/m3, E: 14 GPa, G: 5 GPa, tensile-strength: 235 MPa, compressive-strength: 205 MPa, shear-strength: 48 MPa, scatter: 9 %, source: panels}
        - {id: skin-b, kind: laminate, basis: mean, poisson: 0.15, density: 1700 kg/m3, E: 15 GPa, E-across: 12 GPa, G: 4 GPa, G-across: 3 GPa, tensile-strength: 235 MPa, compressive-strength: 205 MPa, tensile-strength-across: 200 MPa, compressive-strength-across: 180 MPa, shear-strength: 48 MPa, shear-strength-across: 20 MPa, scatter: 9 %, source: panels}
        - {id: comb, kind: core, basis: mean, density: 80 kg/m3, E: 85 MPa, E-across: 80 MPa, E-through: 90 MPa, G: 27 MPa, G-across: 15 MPa, tensile-strength: 2.2 MPa, compressive-strength: 1.2 MPa, tensile-strength-across: 2 MPa, compressive-strength-across: 1 MPa, shear-strength: 1 MPa, shear-strength-across: 0.6 MPa, cell: 6 mm, scatter: 9 %, source: the maker}
        - {id: foam, kind: core, isotropic: yes, basis: mean, density: 80 kg/m3, E: 85 MPa, G: 27 MPa, tensile-strength: 2.2 MPa, compressive-strength: 1.2 MPa, shear-strength: 1 MPa, scatter: 9 %, source: the maker}
        - {id: gl, kind: fibre, isotropic: yes, density: 2550 kg/m3, E: 73 GPa, poisson: 0.22, source: t}
        - {id: cf, kind: fibre, density: 1770 kg/m3, E: 240 GPa, E-across: 15 GPa, G: 27 GPa, poisson: 0.2, source: t}
        - {id: ep, kind: resin, density: 1150 kg/m3, E: 3.2 GPa, poisson: 0.35, source: t}
        - {id: twill, kind: cloth, weave: woven, crimp: 0.93, fibre: gl, resin: ep, areal-weight: 300 g/m2, fibre-fraction: 0.5, tensile-strength: 235 MPa, compressive-strength: 205 MPa, shear-strength: 48 MPa, scatter: 9 %, source: t, basis: mean}
        - {id: tape, kind: cloth, weave: unidirectional, fibre: cf, resin: ep, areal-weight: 300 g/m2, fibre-fraction: 0.6, tensile-strength: 900 MPa, compressive-strength: 500 MPa, tensile-strength-across: 30 MPa, compressive-strength-across: 90 MPa, shear-strength: 40 MPa, shear-strength-across: 30 MPa, G-across: 2.5 GPa, scatter: 9 %, source: t, basis: mean}
        - {id: ply, kind: plywood, wood: wood-a, veneer: 2 mm, density: 480 kg/m3, source: t}
        - {id: ply-b, kind: plywood, basis: mean, density: 440 kg/m3, E: 6 GPa, E-across: 3.6 GPa, G: 0.45 GPa, G-across: 0.12 GPa, poisson: 0.1, bending-strength: 38 MPa, tensile-strength: 34 MPa, tensile-strength-across: 22 MPa, compressive-strength: 32 MPa, compressive-strength-across: 20 MPa, shear-strength: 5.0 MPa, shear-strength-across: 2.4 MPa, veneer: 1.5 mm, scatter: 10 %, source: t}
        - {id: mild, kind: bolt, metal: steel, basis: minimum, tensile-strength: 400 MPa, proof-stress: 240 MPa, shear-strength: 240 MPa, source: t}
      """;

  static String with(String more) {
    return WOODS + more;
  }

  static final List<String> ALL =
      List.of(
          with(
              """
              sections:
                - {id: d, width: 60 mm, layers: [{material: wood-a, thickness: 30 mm, grain: along}, {material: wood-a, thickness: 30 mm, grain: along}], glue: sticky, grade: structural}
                - {id: b, width: 60 mm, layers: [{material: wood-b, thickness: 20 mm, grain: along}, {material: wood-b, thickness: 20 mm, grain: across}, {material: wood-b, thickness: 20 mm, grain: along}], glue: sticky}
                - {id: h, width: 60 mm, layers: [{material: wood-b, thickness: 15 mm, grain: along}, {thickness: 40 mm, strips: [{material: wood-b, width: 15 mm, grain: along}, {void: 30 mm}, {material: wood-b, width: 15 mm, grain: along}]}, {material: wood-b, thickness: 15 mm, grain: along}], glue: sticky}
              assessments:
                - {id: point, method: section, on: 2026-02-14, designed: d, built: b, require: {reserve: 1}, knock-downs: [{for: scarf, slope: 12, on: built, layer: 1, source: t}, {for: moisture, value: 0.9, on: built, source: t}, {for: stiffness, value: 0.9, on: built, layer: 1, source: t}], load: {shape: point, support: simple, force: 500 N, span: 1.5 m, self-weight: yes, factor: 2, source: t}}
                - {id: borne, method: timber, designed: d, built: d, require: {reserve: 1}, load: {shape: uniform, support: simple, force: 500 N, span: 1.5 m, bearing: 2 mm, factor: 2, source: t}}
                - {id: pressed, method: timber, designed: d, built: h, require: {reserve: 1}, factors: {duration: 0.8}, sources: ["duration: t"], load: {support: clamped, pressure: 2 kPa, breadth: 400 mm, span: 1.5 m, factor: 2, source: t}}
                - {id: hung, method: section, designed: d, built: h, require: {reserve: 1}, load: {support: cantilever, shape: triangular, force: 200 N, tip-force: 100 N, span: 1 m, factor: 2, source: t}}
                - {id: turned, method: section, designed: d, built: b, require: {stiffness: 1}, knock-downs: [{for: duration, lasts: long, service-class: 3, on: built}]}
              """),
          with(
              """
              sections:
                - {id: d, shape: tube, material: al, dimensions: {diameter: 80 mm, wall: 3 mm}}
                - {id: b, shape: tube, material: al-b, dimensions: {diameter: 80 mm, wall: 2 mm}}
                - {id: i, shape: i, material: al-b, dimensions: {width: 50 mm, height: 80 mm, web: 3 mm, flange: 4 mm}}
                - {id: p, shape: polygon, material: wood-b, outline: [{y: 0 mm, z: 0 mm}, {y: 60 mm, z: 0 mm}, {y: 60 mm, z: 60 mm}, {y: 0 mm, z: 60 mm}]}
                - {id: r, shape: rectangle, material: wood-a, dimensions: {width: 60 mm, height: 60 mm}}
                - {id: q, shape: polygon, material: al, outline: [{y: 10 mm, z: 0 mm, wall: 3 mm}, {y: 50 mm, z: 0 mm, wall: 3 mm}, {y: 60 mm, z: 60 mm, wall: 4 mm}, {y: 0 mm, z: 60 mm, wall: 3 mm}]}
                - {id: o, shape: polygon, material: al-b, outline: [{y: 10 mm, z: 0 mm, wall: 2 mm}, {y: 50 mm, z: 0 mm, wall: 2 mm}, {y: 60 mm, z: 60 mm, wall: 3 mm}, {y: 0 mm, z: 60 mm, wall: 2 mm}]}
              assessments:
                - {id: mast, method: section, designed: d, built: b, require: {reserve: 1}, load: {tip-force: 200 N, thrust: 5 kN, ends: fixed-free, torque: 100 Nm, span: 1.5 m, factor: 2, source: t}}
                - {id: flanged, method: section, designed: d, built: i, require: {reserve: 1}, load: {force: 1 kN, support: simple, shape: uniform, held-sideways: 300 mm, span: 1.5 m, factor: 2, source: t}}
                - {id: sloping, method: section, designed: q, built: o, require: {torsion: 1}}
                - {id: post, method: timber, designed: r, built: p, require: {reserve: 1}, load: {thrust: 5 kN, ends: fixed, span: 1.5 m, factor: 2, source: t}}
              """),
          with(
              """
              sections:
                - {id: d, width: 1 m, layers: [{material: skin, thickness: 2 mm}, {material: foam, thickness: 20 mm}, {material: skin, thickness: 2 mm}]}
                - {id: b, width: 1 m, layers: [{material: skin-b, thickness: 2 mm}, {material: comb, thickness: 20 mm, grain: across}, {material: skin-b, thickness: 2 mm}]}
                - {id: v, width: 1 m, layers: [{material: ply, thickness: 10 mm, grain: along}]}
                - {id: w, width: 1 m, layers: [{material: ply-b, thickness: 12 mm, grain: across}]}
                - {id: k, width: 1 m, layers: [{material: tape, plies: 2, angle: 90 deg}, {material: wood-b, thickness: 10 mm, grain: across}, {material: twill, plies: 2, angle: 45 deg}]}
              assessments:
                - {id: combed, method: panel, designed: d, built: b, require: {reserve: 1}, load: {pressure: 10 kPa, span: 900 mm, breadth: 600 mm, support: clamped, self-weight: yes, factor: 2, source: t}}
                - {id: veneered, method: panel, designed: v, built: w, require: {reserve: 1}, load: {pressure: 2 kPa, span: 500 mm, breadth: 300 mm, support: simple, factor: 2, source: t}}
                - {id: mixed, method: panel, designed: v, built: k, require: {reserve: 1}, load: {pressure: 2 kPa, span: 500 mm, breadth: 300 mm, support: simple, factor: 2, source: t}}
                - {id: boards, method: section, designed: v, built: k, require: {moment: 1}}
              """),
          with(
              """
              sections:
                - {id: d, width: 1 m, layers: [{material: twill, plies: 3, angle: 0 deg}]}
                - {id: b, width: 1 m, layers: [{material: tape, plies: 1, angle: 90 deg}, {material: twill, plies: 1, angle: 45 deg}, {material: tape, plies: 1, angle: 90 deg}]}
              assessments:
                - {id: laid, method: laminate, designed: d, built: b, require: {strength: 1}, knock-downs: [{for: laminate, value: 0.8, on: built, source: t}]}
              """),
          with(
              """
              sections:
                - {id: d, shape: bolt, material: mild, dimensions: {diameter: 10 mm, count: 4, spacing: 70 mm, end-distance: 90 mm, edge-distance: 40 mm, washer: 34 mm}, layers: [{material: wood-b, thickness: 40 mm, grain: along}, {material: wood-b, thickness: 60 mm, grain: along}]}
                - {id: b, shape: bolt, material: mild, dimensions: {diameter: 10 mm, count: 3, spacing: 70 mm, end-distance: 90 mm, edge-distance: 45 mm, washer: 30 mm}, layers: [{material: wood-b, thickness: 30 mm, grain: across}, {material: wood-b, thickness: 60 mm, grain: along}]}
              assessments:
                - {id: bolted, method: bolt, designed: d, built: b, require: {bearing: 1}, against: [al], knock-downs: [{for: metal, value: 0.9, on: built, source: t}]}
              """),
          with(
              """
              sections:
                - {id: f, shape: foil, dimensions: {chord: 260 mm, thickness-ratio: 0.115}, material: wood-a, skins: [{material: twill, plies: 1, angle: 0 deg}], members: [{what: spine, material: wood-b, width: 28 mm, at: 78 mm}]}
                - {id: g, shape: foil, dimensions: {chord: 250 mm, thickness-ratio: 0.11}, material: wood-b, skins: [{material: twill, plies: 1, angle: 45 deg}], members: [{what: spine, material: wood-a, width: 20 mm, at: 78 mm}]}
                - {id: s, shape: rectangle, material: wood-b, dimensions: {width: 90 mm, height: 60 mm}}
              assessments:
                - {id: foiled, method: section, designed: f, built: g, require: {reserve: 1}, load: {shape: elliptic, speed: 6 kn, area: 0.19 m2, lift: 1.1, density: 1025 kg/m3, span: 0.74 m, factor: 1.5, source: t}}
              """),
          with(
              """
              sections:
                - {id: n, width: 60 mm, layers: [{material: wood-a, thickness: 100 mm, grain: along}]}
                - {id: m, width: 60 mm, layers: [{material: wood-a, thickness: 100 mm, grain: along}], notch: {depth: 20 mm, corner: 30 mm, slope: 2, opposite: no}}
                - {id: t, shape: round, material: wood-a, dimensions: {diameter: 80 mm}, tapers-to: u}
                - {id: u, shape: round, material: wood-a, dimensions: {diameter: 40 mm}}
                - {id: l, shape: rectangle, material: al, dimensions: {width: 10 mm, height: 10 mm}}
              assessments:
                - {id: notched, method: timber, designed: n, built: m, require: {reserve: 1}, load: {force: 1 kN, support: simple, shape: uniform, span: 1.5 m, factor: 2, source: t}}
                - {id: reaching, method: timber, designed: n, built: n, require: {reserve: 1}, load: {force: 500 N, tip-force: 400 N, support: overhang, overhang: 400 mm, span: 1.5 m, factor: 2, source: t}}
                - {id: tapered, method: section, designed: t, built: t, require: {reserve: 1}, load: {tip-force: 200 N, span: 1.5 m, factor: 2, source: t}}
                - {id: linked, method: section, designed: l, built: l, require: {stiffness: 1}, weak-link: {sacrificial: l, rating: {load: 12 kN, basis: mean, scatter: 8 %, source: t}, by: tension, margin: 1.05, chance: 30 %}}
              """));
}
