from spotblue._numbers.mechanics import *
