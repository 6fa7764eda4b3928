### Units that people say otherwise than their symbol. A unit that is not here shows its symbol.

unit-fl_oz = oz líq
unit-imp_fl_oz = oz líq imp
unit-oz_wt = oz peso
unit-ft = pies
unit-in = pulg
unit-yd = yd
unit-mi = mi
unit-sq_ft = pies²
unit-sq_yd = yd²
unit-pt = pintas
unit-qt = cuartos
unit-imp_gal = gal imp
unit-imp_qt = cuartos imp
unit-imp_pt = pintas imp
unit-sq_m = m²
unit-deg = grados
