### Units that people say otherwise than their symbol. A unit that is not here shows its symbol.

unit-fl_oz = fl oz
unit-imp_fl_oz = imp fl oz
unit-oz_wt = oz wt
unit-ft = ft
unit-in = in
unit-yd = yd
unit-mi = mi
unit-sq_ft = sq ft
unit-sq_yd = sq yd
unit-pt = pt
unit-qt = qt
unit-imp_gal = imp gal
unit-imp_qt = imp qt
unit-imp_pt = imp pt
unit-sq_m = sq m
unit-deg = deg
