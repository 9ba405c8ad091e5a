"""How alike are two colours, two stems' colours, two palettes?"""
